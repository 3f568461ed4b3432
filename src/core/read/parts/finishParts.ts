import type { ListedPart } from "../../part.js";
import type { Note } from "../layout/row.js";
import { headingDefault, type NoteDefault, withDefaults } from "../notes/defaults.js";
import type { Context } from "./context.js";
import { mergeCans } from "./mergeCans.js";
import { implausible } from "./plausible.js";
import { finder, plainName, withPieces, withReference } from "./references.js";
import { additionsOf, withRemarks } from "./remarks.js";
import { type Stated, statedPart } from "./statedPart.js";

/** Parts of a whole document: notes applied, cans merged, corrections taken, references followed, doubts marked. */
export function finishParts(
  listed: readonly Stated[],
  defaults: readonly NoteDefault[],
  remarks: readonly Note[],
  context: Context,
): ListedPart[] {
  const stated = [...listed, ...additionsOf(remarks, listed, context), ...unlistedSwitches(listed, context)];
  const find = finder(stated.map((entry) => entry.part));
  const filled = stated.map((entry) => (takesNotes(entry, find) ? withNotes(entry, defaults) : entry.part));
  const corrected = withRemarks(mergeCans(filled), remarks, context);
  const findAgain = finder(corrected);
  const followed = corrected.map((part) => withReference(part, findAgain));
  const whole = followed.map((part) => withPieces(part, followed));
  return markDuplicates(whole).map(markImplausible);
}

/** Switches that stand only in the line of the control that carries them ("volume control with SW1"). */
function unlistedSwitches(listed: readonly Stated[], context: Context): Stated[] {
  const find = finder(listed.map((entry) => entry.part));
  return listed.flatMap(({ part, words }) => {
    const named = words
      .flatMap((text) => text.references)
      .find((reference) => reference.as === "with" && /^SW?-?\d/.test(reference.designator));
    if (!named || part.kind !== "potentiometer" || find(named.designator, part.section)?.section === part.section)
      return [];
    const { section, lines } = part;
    const cells = [{ role: "description", text: `Switch, part of ${part.designators[0]}`, unit: null }] as const;
    const record = {
      lines,
      cells,
      section,
      heading: null,
      table: -1,
      names: [named.designator],
      partNumber: null,
      borrowed: new Set<never>(),
    };
    return [statedPart(record, context)];
  });
}

function withNotes({ part, heading, contradicted }: Stated, defaults: readonly NoteDefault[]): ListedPart {
  const above = heading ? headingDefault(heading) : null;
  return withDefaults(part, above ? [above, ...defaults] : defaults, contradicted);
}

/** Tuning and trimming capacitors take nothing from notes on fixed ones. */
const isVariable = ({ part, words }: Stated) =>
  part.kind === "capacitor" &&
  words.some(({ meanings, tokens }) =>
    meanings.some(
      ({ field, value, from }) =>
        (field === "mark" && value === "variable") || /^(?:trimmers?|padder|padding)$/.test(tokens[from]!.key),
    ),
  );

/** Whether notes speak of a part: not of one that is not fitted, the same as another, or a mere piece of another. */
function takesNotes(entry: Stated, find: ReturnType<typeof finder>): boolean {
  const { part } = entry;
  if (part.valueState === "not-fitted" || part.sameAs !== null || isVariable(entry)) return false;
  if (part.partOf === null) return true;
  return (part.value !== null || part.valueMin !== null) && find(part.partOf, part.section)?.kind !== "network";
}

/**
 * Whether the sections number anew: the lowest number of some letter stands in more than one of them. Then the same name
 * in two sections is no fault.
 */
function numbersAnew(parts: readonly ListedPart[]): boolean {
  const lowest = new Map<string, { number: number; sections: Set<string | null> }>();
  for (const part of parts)
    for (const name of part.designators) {
      const [, letters = "", digits = ""] = /^(.*?)(\d+)[A-Z]?$/.exec(plainName(name)) ?? [];
      const found = lowest.get(letters);
      const number = Number(digits);
      if (!found || number < found.number) lowest.set(letters, { number, sections: new Set([part.section]) });
      else if (number === found.number) found.sections.add(part.section);
    }
  return [...lowest.values()].some(({ sections }) => sections.size > 1);
}

function markDuplicates(parts: readonly ListedPart[]): ListedPart[] {
  const restart = numbersAnew(parts);
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
    text: `${part.valueText} ${part.use ?? ""}`,
  });
  return warning ? { ...part, warnings: [...part.warnings, warning] } : part;
}
