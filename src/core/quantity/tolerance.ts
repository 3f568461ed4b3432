import type { Tolerance } from "../part.js";
import { PartsError } from "../problem.js";
import { type LetterSystem, toleranceOfLetter } from "./toleranceLetters.js";

const HOW = "Write it like 10 %, ±10 %, -20/+80 %, GMV, gold, or with a letter such as K.";

/** Words for tolerances: band colours of composition resistors (RETMA REC-116), and the guaranteed minimum value. */
const WORDS: Readonly<Record<string, Tolerance>> = {
  gold: { minus: 0.05, plus: 0.05 },
  silver: { minus: 0.1, plus: 0.1 },
  none: { minus: 0.2, plus: 0.2 },
  "no band": { minus: 0.2, plus: 0.2 },
  gmv: { minus: 0, plus: 1 },
};

const UNITS: Readonly<Record<string, number>> = {
  p: 1e-12,
  pf: 1e-12,
  mmf: 1e-12,
  nf: 1e-9,
  uf: 1e-6,
  mfd: 1e-6,
  ohm: 1,
  ohms: 1,
  ω: 1,
};

const NUMBER = "(\\d*\\.?\\d+(?:/\\d+)?)";
const PERCENT = "(?:%|percent|pct)";
const EVEN = new RegExp(`^(?:±|\\+/?-)?${NUMBER}${PERCENT}$|^(?:±|\\+/?-)${NUMBER}$`);
const UNEVEN = new RegExp(`^([+-])${NUMBER}${PERCENT}?[/,]?([+-])${NUMBER}${PERCENT}?$`);
const ABSOLUTE = new RegExp(`^(?:±|\\+/?-)?${NUMBER}([a-zω]+)$`);

/** What a tolerance text may rest on: the system of its letters, and the nominal value for one given in units. */
export type ToleranceHints = { readonly system?: LetterSystem; readonly nominal?: number; readonly farads?: boolean };

/**
 * A tolerance from the ways people write it: `±10 %`, `-20/+80 %`, `GMV`, `gold`, a letter, or an amount such as `±0.5 pF`.
 *
 * An amount needs the nominal value, and letters B to G on a capacitor under 10 pF count picofarads.
 *
 * @param text As printed; a decimal comma is understood.
 * @throws PartsError "unreadable" when no tolerance can be made out, "unknown-name" for a letter the system lacks.
 * @example readTolerance("-20/+80 %") // { minus: 0.2, plus: 0.8 }
 */
export function readTolerance(text: string, hints: ToleranceHints = {}): Tolerance {
  const word = text.trim().toLowerCase();
  if (WORDS[word]) return WORDS[word];
  if (/^[A-Z]$/.test(text.trim())) {
    return toleranceOfLetter(text.trim(), hints.system, hints.farads ? (hints.nominal ?? null) : null);
  }
  const found = readFigures(tidy(word), hints.nominal);
  if (!found || found.minus > 1) throw new PartsError("unreadable", text, HOW);
  return found;
}

function readFigures(plain: string, nominal: number | undefined): Tolerance | null {
  const even = EVEN.exec(plain);
  if (even) return evenly(numberOf(even[1] ?? even[2]!) / 100);
  const uneven = UNEVEN.exec(plain);
  if (uneven && uneven[1] !== uneven[3]) {
    const [first, second] = [numberOf(uneven[2]!) / 100, numberOf(uneven[4]!) / 100];
    return uneven[1] === "-" ? { minus: first, plus: second } : { minus: second, plus: first };
  }
  const absolute = ABSOLUTE.exec(plain);
  const unit = UNITS[absolute?.[2] ?? ""];
  return absolute && unit && nominal ? evenly((numberOf(absolute[1]!) * unit) / nominal) : null;
}

const evenly = (ratio: number): Tolerance => ({ minus: ratio, plus: ratio });

function numberOf(figures: string): number {
  const [over, under] = figures.split("/").map(Number);
  return under ? over! / under : over!;
}

function tidy(text: string): string {
  return text
    .replace(/[−–]/g, "-")
    .replace(/(\d?)½/g, (_, whole: string) => `${whole}.5`)
    .replace(/[µμ]/g, "u")
    .replace(/Ω/g, "ω")
    .replace(/(\d),(?=\d)/g, "$1.")
    .replace(/\s+/g, "");
}

/**
 * A tolerance in one notation: `±10 %`, or `-20/+80 %` when its sides differ.
 *
 * @example writeTolerance({ minus: 0.2, plus: 0.8 }) // "-20/+80 %"
 */
export function writeTolerance({ minus, plus }: Tolerance): string {
  const percent = (ratio: number) => String(Number((ratio * 100).toPrecision(6)));
  return Math.abs(minus - plus) < 1e-12 ? `±${percent(minus)} %` : `-${percent(minus)}/+${percent(plus)} %`;
}
