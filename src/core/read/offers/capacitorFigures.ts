import type { CanSection, Warning } from "../../part.js";
import { times } from "../../quantity/readValue.js";
import { inBase, type OfferFigure } from "./figures.js";
import type { PrintedVolts, Stated, StatedHints } from "./stated.js";

type Capacitance = { readonly farads: number; readonly figure: OfferFigure };
type Found = {
  readonly farads: Capacitance[];
  /** The volts printed behind each run of capacitances, and how many capacitances there were before them. */
  readonly volts: { readonly volts: number[]; readonly current: "ac" | "dc" | null; readonly behind: number }[];
  readonly warnings: Warning[];
};

const AT = /[@/]|\b(at|bei|bij|a)\b/;
const LEAST_VOLTS = 2.5;
const MOST_FACTOR_OF_TOLERANCE = 0.3;

/**
 * Capacitance, sections and volts from a capacitor's figures.
 *
 * A bare number is volts behind a capacitance or a stroke; else a capacitance: microfarads below 1 and of electrolytics
 * and paper, picofarads above of mica and ceramic. Two or more capacitances are sections, of a trimmer its limits.
 */
export function capacitorFigures(figures: readonly OfferFigure[], hints: StatedHints): Partial<Stated> {
  const found = sort(figures, hints);
  const { own, absolute } = withoutAbsolute(found.farads);
  const volts = found.volts.map(({ volts, current }) => ({ volts, current }));
  const base = { volts, warnings: found.warnings };
  if (own.length === 0) return base;
  if (own.length === 1) {
    const farads = own[0]!.farads;
    const tolerance = absolute === null ? null : { minus: absolute / farads, plus: absolute / farads };
    return { ...base, value: farads, tolerance };
  }
  if (isRange(own, hints)) return { ...base, valueMin: own[0]!.farads, valueMax: own.at(-1)!.farads };
  return { ...base, sections: sectionsOf(own, found), volts: sharedVolts(own, found) };
}

function sort(figures: readonly OfferFigure[], hints: StatedHints): Found {
  const found: Found = { farads: [], volts: [], warnings: [] };
  figures.forEach((figure, i) => {
    const multiple = multipleOf(figures, i);
    if (multiple === "count") return;
    if (isFarads(figure, figures, i, hints)) {
      for (let n = 0; n < multiple; n++)
        found.farads.push({ farads: capacitance(figure, hints, found.warnings), figure });
    } else if (figure.measure === "volt" || (isBare(figure) && isBareVolts(figure, figures, i, found))) {
      addVolts(found, figure);
    } else if (isBare(figure) && figure.before !== "x") {
      if (found.farads.length === 0 || found.volts.at(-1)?.behind === found.farads.length || sameGroup(figures, i)) {
        found.farads.push({ farads: capacitance(figure, hints, found.warnings), figure });
      }
    }
  });
  return found;
}

/** "2x16 µF" and "100 µF x 2": how often a capacitance counts, or that the figure is that count. */
function multipleOf(figures: readonly OfferFigure[], i: number): number | "count" {
  const [figure, next, before] = [figures[i]!, figures[i + 1], figures[i - 1]];
  const times = (sign: string | undefined) => sign === "x" || sign === "×";
  const isCount = (f: OfferFigure | undefined) =>
    f !== undefined && !f.own && Number.isInteger(f.number) && f.number >= 2 && f.number <= 6;
  if (isCount(figure) && ((times(figure.before) && before?.own) || (times(next?.before) && next?.own))) return "count";
  if (times(figure.before) && isCount(before)) return before!.number;
  if (times(next?.before) && isCount(next)) return next!.number;
  return 1;
}

const hasFarads = (figure: OfferFigure) => figure.measure === "farad" || (figure.measure === null && figure.factor < 1);

/** A capacitance by its unit, or the first of .03/1000V where nothing else could be one. */
function isFarads(
  figure: OfferFigure,
  figures: readonly OfferFigure[],
  i: number,
  { technology }: StatedHints,
): boolean {
  if (hasFarads(figure)) return true;
  const next = figures[i + 1];
  const isPair =
    !figure.own && figure.measure === "volt" && next?.own && next.group === figure.group && next.before === "/";
  const others = figures.filter((other) => other.group !== figure.group);
  const small = figure.number < (technology.includes("electrolytic") ? 100_000 : 30);
  return (
    Boolean(isPair) &&
    small &&
    figure.number !== next!.number &&
    !others.some((other) => hasFarads(other) || isBare(other))
  );
}

const isBare = (figure: OfferFigure) => figure.measure === null && figure.factor === 1;

/** Bare volts stand behind a capacitance, an "at" or a stroke: 8 mf 450, .0082 at 1600, .1/600, 450/450/25. */
function isBareVolts(figure: OfferFigure, figures: readonly OfferFigure[], i: number, found: Found): boolean {
  if (found.farads.length === 0 || figure.number < LEAST_VOLTS) return false;
  const waiting = found.farads.length - (found.volts.at(-1)?.behind ?? 0);
  if (AT.test(figure.before)) return waiting > 0 || found.volts.at(-1)?.behind === found.farads.length;
  const isList = figures[i + 1]?.group === figure.group || figures[i - 1]?.group === figure.group;
  if (isList && waiting === 0) return found.volts.at(-1)!.volts.length < found.farads.length;
  return waiting > 0 && !/[-+]/.test(figure.before) && found.farads.at(-1)!.figure.own;
}

const sameGroup = (figures: readonly OfferFigure[], i: number) =>
  figures[i - 1]?.group === figures[i]!.group && figures[i]!.before !== "/";

function addVolts(found: Found, figure: OfferFigure): void {
  const last = found.volts.at(-1);
  const current = currentOf(figure);
  const volts = inBase({ ...figure, factor: figure.measure === "volt" ? figure.factor : 1 });
  const goesOn =
    last &&
    last.behind === found.farads.length &&
    /^\/$|^[-–]$|^,$/.test(figure.before) &&
    (last.current ?? current) === (current ?? last.current);
  if (goesOn && (!figure.own || figure.before !== ",")) last.volts.push(volts);
  else found.volts.push({ volts: [volts], current, behind: found.farads.length });
}

/** Whether a unit of volts says alternating or direct current. */
export function currentOf({ unitText }: OfferFigure): "ac" | "dc" | null {
  if (/ac/i.test(unitText)) return "ac";
  return /dc/i.test(unitText) ? "dc" : null;
}

/** A bare number in farads: tenths are microfarads, and so are whole ones unless mica or ceramic or far too many. */
function capacitance(figure: OfferFigure, { technology }: StatedHints, warnings: Warning[]): number {
  if (figure.measure === "farad" || figure.factor < 1) return inBase(figure);
  const small = technology.some((word) => /mica|ceramic|polystyrene/.test(word));
  if (figure.number < 1 || (!small && figure.number < 1000)) {
    const usual = figure.number < 1 || technology.includes("electrolytic");
    if (!usual) warnings.push({ code: "unit-assumed", text: `${figure.number} is read as microfarads` });
    return times(figure.number, 1e-6);
  }
  warnings.push({ code: "unit-assumed", text: `${figure.number} is read as picofarads` });
  return times(codeOrNumber(figure.number), 1e-12);
}

/** 103 on a ceramic body is a code: 10 and three zeros. @see IEC 60062 */
function codeOrNumber(number: number): number {
  const zeros = number % 10;
  const isCode = Number.isInteger(number) && number >= 101 && number <= 999 && zeros >= 1 && zeros <= 5;
  return isCode ? Math.floor(number / 10) * 10 ** zeros : number;
}

/** A second capacitance far below the first is an absolute tolerance: 5PF 0.5PF; one that says the first again is dropped. */
function withoutAbsolute(farads: readonly Capacitance[]): { own: readonly Capacitance[]; absolute: number | null } {
  const [first, second] = farads;
  if (farads.length !== 2 || first!.figure.group === second!.figure.group) return { own: farads, absolute: null };
  if (Math.abs(first!.farads / second!.farads - 1) < 0.01) return { own: [first!], absolute: null };
  const isLimit =
    first!.farads < 1e-10 && second!.farads <= first!.farads * MOST_FACTOR_OF_TOLERANCE && second!.farads <= 2e-12;
  return isLimit ? { own: [first!], absolute: second!.farads } : { own: farads, absolute: null };
}

function isRange(own: readonly Capacitance[], { technology }: StatedHints): boolean {
  const [first, second] = own;
  const rising = own.length === 2 && first!.farads < second!.farads;
  return (
    rising && /^([-–—]|to|thru|bis|tot|a|\.+)$/.test(second!.figure.before) && !technology.includes("electrolytic")
  );
}

function sectionsOf(own: readonly Capacitance[], found: Found): CanSection[] {
  return own.map(({ farads }, i) => ({ suffix: null, farads, volts: voltsOfSection(i, own.length, found) }));
}

function voltsOfSection(i: number, count: number, found: Found): number | null {
  const runs = found.volts;
  const listed = runs.find((run) => run.volts.length === count && !isWithSurge(run.volts));
  if (listed) return listed.volts[i]!;
  if (runs.length === count && runs.every((run) => run.volts.length === 1 && run.behind === count))
    return runs[i]!.volts[0]!;
  const run = runs.find((candidate) => candidate.behind > i) ?? runs[0];
  return run?.volts[0] ?? null;
}

/** 450/500 V is the working volts and the surge, a tenth above; two sections are rated further apart. */
const isWithSurge = (volts: readonly number[]): boolean =>
  volts.length === 2 && volts[1]! > volts[0]! * 1.05 && volts[1]! < volts[0]! * 1.2;

/** The volts that all sections share; none where they differ. */
function sharedVolts(own: readonly Capacitance[], found: Found): PrintedVolts[] {
  const all = own.map((_, i) => voltsOfSection(i, own.length, found));
  return all[0] !== null && all.every((volts) => volts === all[0])
    ? [{ volts: [all[0]!], current: found.volts[0]?.current ?? null }]
    : [];
}
