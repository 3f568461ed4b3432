import type { Kind, Tolerance, Warning } from "../../part.js";
import { attempt } from "../../problem.js";
import type { Unit } from "../../quantity/notation/units.js";
import { times } from "../../quantity/readValue.js";
import { toleranceOfLetter } from "../../quantity/toleranceLetters.js";
import type { PrintedTolerance, Words } from "../words/words.js";
import { ofRoles, type Text } from "./texts.js";

const BY_WORD: Readonly<Record<string, Tolerance>> = {
  gmv: { minus: 0, plus: 1 },
  "5": { minus: 0.05, plus: 0.05 },
  "10": { minus: 0.1, plus: 0.1 },
  "20": { minus: 0.2, plus: 0.2 },
};

/** A tolerance as read: in ratios, or absolute and still to be set against the value; with a warning where two contradict. */
export type ReadTolerance = {
  readonly tolerance: Tolerance | null;
  readonly absolute: PrintedTolerance | null;
  readonly warnings: readonly Warning[];
};

const NONE: ReadTolerance = { tolerance: null, absolute: null, warnings: [] };
const ratio = (tolerance: Tolerance): ReadTolerance => ({ tolerance, absolute: null, warnings: [] });

/** The tolerance that a part states: of its own column, else of the first text that has one. */
export function statedTolerance(texts: readonly Text[], kind: Kind): ReadTolerance {
  for (const text of ofRoles(texts, "tolerance")) {
    const found = inColumn(text, kind);
    if (found) return found;
  }
  for (const { words } of ofRoles(texts, "rating", "description", "value", "remarks")) {
    const found = inText(words);
    if (found) return found;
  }
  return NONE;
}

function inColumn({ words }: Text, kind: Kind): ReadTolerance | null {
  const found = inText(words);
  if (found)
    return found.absolute && !found.absolute.unit
      ? ratio({ minus: found.absolute.minus / 100, plus: found.absolute.plus / 100 })
      : found;
  const bare = words.amounts[0]?.figures[0];
  if (bare && !bare.unit) return ratio({ minus: bare.number / 100, plus: bare.number / 100 });
  return ofLetter(words.text.trim(), kind);
}

const PICOFARADS: Readonly<Record<string, number>> = { B: 0.1, C: 0.25, D: 0.5 };
const PICO: Unit = { measure: "farad", factor: 1e-12 };

/** A letter alone, or "none" for a fourth band that is missing. On capacitors B, C and D count picofarads (common practice). */
function ofLetter(text: string, kind: Kind): ReadTolerance | null {
  if (/^none$/i.test(text)) return ratio(BY_WORD["20"]!);
  if (!/^[A-Z]$/.test(text)) return null;
  const size = kind === "capacitor" ? PICOFARADS[text] : undefined;
  if (size !== undefined)
    return { ...NONE, absolute: { minus: size, plus: size, absolute: true, unit: PICO, from: 0, to: 1 } };
  const found = attempt(() => toleranceOfLetter(text));
  return found && ratio(found);
}

function inText(words: Words): ReadTolerance | null {
  const [first, second] = words.tolerances;
  if (first && second && second.from - first.to <= strokeAt(words, first.to) && first.plus !== second.plus)
    return { ...NONE, warnings: [{ code: "conflict", text: `two tolerances are printed: "${words.text}"` }] };
  if (first) return first.absolute ? { ...NONE, absolute: first } : ratio({ minus: first.minus, plus: first.plus });
  const meaning = words.meanings.find((candidate) => candidate.field === "tolerance");
  return meaning ? ratio(BY_WORD[meaning.value]!) : null;
}

/** How many tokens a stroke between two tolerances takes ("10% / 5%"). */
const strokeAt = ({ tokens }: Words, at: number) => (tokens[at]?.text === "/" ? 1 : 0);

/** Limits of the trade in percent: a bare one of these ("2.2 meg ±10") has lost its percent sign. */
const BARE_PERCENT: ReadonlySet<number> = new Set([5, 10, 15, 20, 30]);

/** An absolute tolerance (10 mmf +/- .5 mmf) as ratios of the value; its unit is its own, else the value's. */
export function relativeTolerance(absolute: PrintedTolerance, value: number, printed: number): Tolerance {
  const size = absolute.unit
    ? (limit: number) => times(limit, absolute.unit!.factor) / value
    : (limit: number) => (BARE_PERCENT.has(limit) || limit >= printed ? limit / 100 : limit / printed);
  return { minus: Number(size(absolute.minus).toPrecision(12)), plus: Number(size(absolute.plus).toPrecision(12)) };
}
