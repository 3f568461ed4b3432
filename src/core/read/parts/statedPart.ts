import type { Kind, ListedField, ListedPart, Warning } from "../../part.js";
import { cellText } from "../layout/row.js";
import type { ListRecord } from "../records/listRecord.js";
import { readWords } from "../words/readWords.js";
import type { Words } from "../words/words.js";
import type { Context } from "./context.js";
import { statedTaper } from "./materials.js";
import { innerOfCoil, innerOfNetwork, innerOfTapped } from "./networks.js";
import { quantityOf } from "./quantity.js";
import { type StatedFigures, statedFigures } from "./statedFigures.js";
import { relativeTolerance } from "./statedTolerance.js";
import { ofRoles, printedText, type Text, textsOf, valueText } from "./texts.js";
import { clashes } from "./typeDesignation.js";
import type { ReadValues } from "./value.js";

/** Kinds whose printed watts are those of a load, or of the resistor they are wound on. */
const NO_WATTS: ReadonlySet<Kind> = new Set(["transformer", "inductor"]);

/** What a part states by its own line alone, with what the later steps need: the words, those of the heading above. */
export type Stated = {
  readonly part: ListedPart;
  readonly words: readonly Words[];
  readonly heading: Words | null;
  /** Fields of which the line says two things: notes do not fill them. */
  readonly contradicted: ReadonlySet<ListedField>;
};

/** The part that a record states, nothing borrowed but dittos. */
export function statedPart(
  record: ListRecord,
  context: Context,
  texts: readonly Text[] = textsOf(record, context.writing),
): Stated {
  const heading = record.heading ? readWords(record.heading, context.writing) : null;
  const words = ofRoles(texts, "description", "value", "rating", "remarks").map((text) => text.words);
  const figures = statedFigures(record, texts, { words, heading }, context);
  const { kind, code, read, can, tolerance } = figures;
  const inner = innerOf(kind, texts, read, context);
  const { quantity, warnings } = quantityOf(record, words, can?.sections.length ?? 0, read.state === "not-fitted");
  const part: ListedPart = {
    lines: record.lines,
    printed: printedText(record),
    valueText: valueText(record),
    section: record.section,
    designators: record.names,
    kind,
    value: can ? null : read.value,
    valueState: can || inner ? "stated" : read.state,
    valueMin: read.min,
    valueMax: read.max,
    tolerance: ratiosOf(figures),
    watts: NO_WATTS.has(kind) ? null : figures.watts,
    volts: can ? can.volts : (figures.volts[0] ?? null),
    construction: figures.construction,
    dielectric: figures.dielectric,
    temperatureCoefficient: firstCoefficient(words) ?? code?.temperatureCoefficient ?? null,
    taper: statedTaper(texts, kind),
    quantity,
    sections: can?.sections ?? null,
    inner,
    sameAs: referenced(texts, "same"),
    partOf: referenced(texts, "part-of"),
    stockNumber: record.partNumber,
    use: cellText(record, "use") || null,
    from: dittoes(record),
    warnings: [
      ...read.warnings,
      ...tolerance.warnings,
      ...(can?.warnings ?? []),
      ...clashes(read, code, words, kind),
      ...warnings,
      ...doubts(record, figures.repaired),
    ],
  };
  const contradicted = new Set<ListedField>(tolerance.warnings.length > 0 ? ["tolerance"] : []);
  return { part, words, heading, contradicted };
}

/** A name or a rating that had to be repaired is said so. */
function doubts(record: ListRecord, rating: boolean): Warning[] {
  const name = cellText(record, "designator").includes("?");
  const found = [
    name ? "the designator follows from the order of the list" : null,
    rating ? "a letter stands for a figure in a rating" : null,
  ];
  return found.flatMap((text) => (text === null ? [] : [{ code: "unreadable" as const, text }]));
}

function innerOf(kind: Kind, texts: readonly Text[], read: ReadValues, context: Context): ListedPart["inner"] {
  const own = ofRoles(texts, "value", "description")[0]?.words;
  if (kind === "resistor" && read.list) return innerOfTapped(read.list, "resistor");
  if (kind === "inductor")
    return texts.map((text) => innerOfCoil(text.words, context)).find((found) => found !== null) ?? null;
  if (kind !== "network" || !own) return null;
  const inner = innerOfNetwork(own, context);
  return inner.length > 1 ? inner : null;
}

/** The tolerance in ratios of the value: an absolute one of a value that nobody knows is none. */
function ratiosOf({ tolerance: { tolerance, absolute }, read, code }: StatedFigures): ListedPart["tolerance"] {
  if (tolerance) return tolerance;
  if (!absolute) return code?.tolerance ?? null;
  return read.value && read.printed ? relativeTolerance(absolute, read.value, read.printed) : null;
}

const firstCoefficient = (words: readonly Words[]) =>
  words.map((text) => text.coefficient).find((found) => found !== null) ?? null;

const referenced = (texts: readonly Text[], as: "same" | "part-of") =>
  texts.flatMap((text) => text.words.references).find((reference) => reference.as === as)?.designator ?? null;

const FIELDS: Readonly<Record<string, readonly ListedField[]>> = {
  description: ["construction", "dielectric", "kind"],
  value: ["value"],
  tolerance: ["tolerance"],
  rating: ["watts", "volts"],
  watts: ["watts"],
  volts: ["volts"],
};

/** Fields whose cell was taken from the row above. */
function dittoes(record: ListRecord): ListedPart["from"] {
  const fields = [...record.borrowed].flatMap((role) => FIELDS[role] ?? []);
  return Object.fromEntries(fields.map((field) => [field, { by: "ditto" as const, at: "the row above" }]));
}
