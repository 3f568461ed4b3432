import type { Part } from "../part.js";
import { figures } from "../quantity/figures.js";
import { writeTolerance } from "../quantity/tolerance.js";
import { writeValue } from "../quantity/writeValue.js";
import { wattsText } from "../rate/wattsText.js";
import type { Piece, Ratings } from "../ratings.js";
import { technologyOf } from "../rules/technologies.js";
import type { Stages } from "./stages.js";

const wattsOf = (watts: number | null) => (watts === null ? "" : wattsText(watts));

/** A label within a sentence; names of letters stay capitals. */
export const lower = (label: string) =>
  /^[A-Z][a-z]/.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label;

const joined = (texts: readonly (string | null | undefined)[], by = " ") => texts.filter(Boolean).join(by);

/** Kinds whose value a restorer names. */
const VALUED: readonly Part["kind"][] = ["resistor", "capacitor", "potentiometer", "thermistor"];

/** The old part as a restorer names it. @example oldText(stages) // "R7 470 k 1/2 W carbon composition resistor, plate load" */
export function oldText({ part, rule }: Stages): string {
  const volts = part.kind === "capacitor" && part.volts ? `${figures(part.volts.value)} V` : "";
  const watts = part.kind === "resistor" ? wattsOf(part.watts?.value ?? null) : "";
  const value = part.value && VALUED.includes(part.kind) ? writeValue(part.value.value, part.kind) : "";
  const name = joined([part.designator, value, watts, volts, lower(rule.classRow.label)]);
  return rule.roleRow.id === "general" ? name : `${name}, ${lower(rule.roleRow.label)}`;
}

/** Whether the aim's own text says all: a fuse, a lamp, a pair of unlike parts, the same type again. */
const saysAll = ({ kind, aim }: Ratings) => kind === "fuse" || aim?.pieces[0]?.value === null;

/** The new part in words. @example newText(ratings) // "470 k ±5 % 1 W metal film, 350 V body" */
export function newText(ratings: Ratings): string {
  const { kind, aim, choices = [], voltsKind } = ratings;
  const piece = aim?.pieces[0];
  if (!aim || !piece) return choices.length > 0 ? `choose: ${choices.join("; or ")}` : "";
  if (saysAll(ratings)) return lower(aim.text);
  const technology = lower(technologyOf(piece.technology)?.label ?? piece.technology);
  const several = aim.pieces.length > 1 ? ` (${aim.pieces.filter((each) => !each.kind).length} pieces)` : "";
  return joined(
    [joined([aim.text, tolerance(piece), wattsOf(piece.watts), technology]) + several, volts(piece, kind, voltsKind)],
    ", ",
  );
}

const tolerance = (piece: Piece) => (piece.tolerance ? writeTolerance(piece.tolerance) : "");

function volts(piece: Piece, kind: Part["kind"], voltsKind: "ac" | "dc"): string {
  if (piece.volts === null) return "";
  if (kind === "resistor") return `${figures(piece.volts)} V body`;
  return `${figures(piece.volts)} V${voltsKind === "ac" ? " a.c." : ""}`;
}

/** How an action reads behind the reason for it. */
const DONE: Readonly<Record<Stages["decision"]["action"], string>> = {
  keep: "keep",
  test: "test; if it goes",
  replace: "replace",
  lift: "lift a lead; if it goes",
  check: "check",
  ask: "ask",
};

/** Where something has to be known before a new part can be named. */
const NOTHING_YET = "nothing to aim at yet";

/** A verdict that only repeats the action is left out: "reads 612 k, +30 %: bad" is "reads 612 k, +30 %". */
const withoutVerdict = (reason: string) => reason.replace(/: (bad|good)\b/, "").replace(/; parallel .*$/, "");

/**
 * Why, in one line: what decided, what is done, what takes the part's place, the limit that decided that, and what else bears on it.
 *
 * @param pieces What the part is split into, where it is: their new parts stand in the line.
 * @example reasonLine(stages) // "reads 612 k, +30 %, replace; 470 k ±5 % 1 W metal film, 350 V body, because 250 V would be all of a 1/2 W body's limit"
 */
export function reasonLine({ decision, ratings, also = [] }: Stages, pieces: readonly Stages[] = []): string {
  const { action } = decision;
  const isFitted = action === "replace" || action === "test" || action === "lift";
  const whole = joined([newText(ratings) || NOTHING_YET, ratings.decides ? `because ${ratings.decides}` : ""], ", ");
  const parts = pieces.map((piece) => newText(piece.ratings)).filter(Boolean);
  const fitted = !isFitted
    ? ""
    : parts.length > 0
      ? parts.join("; ")
      : newText(ratings) || ratings.decides
        ? whole
        : "";
  const separator = action === "replace" ? "; " : ": ";
  const line = joined([`${withoutVerdict(decision.leads)}, ${fitted ? DONE[action] : action}`, fitted], separator);
  return joined([line, ...also], "; ");
}

/**
 * One line that a restorer would write of a part: what it was, and the line of its reasons.
 *
 * @param pieces What the part is split into, where it is.
 * @example oneLine(stages) // "R7 470 k 1/2 W carbon composition resistor, plate load: reads 612 k, +30 %, replace; 470 k ..."
 */
export function oneLine(stages: Stages, pieces: readonly Stages[] = []): string {
  return `${oldText(stages)}: ${reasonLine(stages, pieces)}`;
}
