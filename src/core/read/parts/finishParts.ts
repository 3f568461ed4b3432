import type { ListedPart } from "../../part.js";
import type { Note } from "../layout/row.js";
import { type NoteDefault, withDefaults } from "../notes/defaults.js";
import type { Context } from "./context.js";
import { mergeCans } from "./mergeCans.js";
import { implausible } from "./plausible.js";
import { finder, plainName, withPieces, withReference } from "./references.js";
import { withRemarks } from "./remarks.js";
import type { Stated } from "./statedPart.js";

/** Parts of a whole document: cans merged, corrections and notes applied, references followed, doubts marked. */
export function finishParts(
  stated: readonly Stated[],
  defaults: readonly NoteDefault[],
  remarks: readonly Note[],
  context: Context,
): ListedPart[] {
  const variable = new Set(stated.filter(isVariable).map((entry) => entry.part.lines[0]));
  const merged = mergeCans(stated.map((entry) => entry.part));
  const corrected = withRemarks(merged, remarks, context);
  const find = finder(corrected);
  const filled = corrected.map((part) => (takesNotes(part, find, variable) ? withDefaults(part, defaults) : part));
  const followed = filled.map((part) => withReference(part, finder(filled)));
  const whole = followed.map((part) => withPieces(part, followed));
  return markDuplicates(whole).map(markImplausible);
}

/** Tuning and trimming capacitors take nothing from notes on fixed ones. */
const isVariable = (entry: Stated) =>
  entry.part.kind === "capacitor" &&
  entry.words.some((words) =>
    words.meanings.some(
      (meaning) =>
        (meaning.field === "mark" && meaning.value === "variable") ||
        /^(?:trimmers?|padder|padding)$/.test(words.tokens[meaning.from]!.key),
    ),
  );

/** Whether notes speak of a part: not of one that is not fitted, the same as another, or a mere piece of another. */
function takesNotes(
  part: ListedPart,
  find: ReturnType<typeof finder>,
  variable: ReadonlySet<number | undefined>,
): boolean {
  if (part.valueState === "not-fitted" || part.sameAs !== null || variable.has(part.lines[0])) return false;
  if (part.partOf === null) return true;
  return (part.value !== null || part.valueMin !== null) && find(part.partOf, part.section)?.kind !== "network";
}

/** Above this share of repeated names the sections number anew, and the same name in two of them is no fault. */
const RESTARTS = 0.08;

function markDuplicates(parts: readonly ListedPart[]): ListedPart[] {
  const all = parts.flatMap((part) => part.designators.map(plainName));
  const restart = all.length - new Set(all).size > Math.max(2, all.length * RESTARTS);
  const seen = new Set<string>();
  return parts.map((part) => {
    const keys = part.designators.map((name) => `${restart ? part.section : ""}/${plainName(name)}`);
    const again = keys.filter((key) => seen.has(key)).map((key) => key.split("/")[1]);
    for (const key of keys) seen.add(key);
    if (again.length === 0) return part;
    return {
      ...part,
      warnings: [
        ...part.warnings,
        { code: "duplicate-designator", text: `${again.join(", ")} stands in the list before` },
      ],
    };
  });
}

function markImplausible(part: ListedPart): ListedPart {
  if (part.value === null) return part;
  const warning = implausible({
    kind: part.kind,
    value: part.value,
    volts: part.volts,
    watts: part.watts,
    dielectric: part.dielectric,
    construction: part.construction,
    tolerance: part.tolerance ? Math.max(part.tolerance.minus, part.tolerance.plus) : null,
    text: part.printed,
  });
  return warning ? { ...part, warnings: [...part.warnings, warning] } : part;
}
