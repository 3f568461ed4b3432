import type { Dielectric, Kind, ListedField, ListedPart, Warning } from "../../part.js";
import { cellText } from "../layout/row.js";
import type { ListRecord } from "../records/listRecord.js";
import { readWords } from "../words/readWords.js";
import type { PrintedTolerance, Words } from "../words/words.js";
import { type Can, canOfGang, canOfLabels, canOfList, canOfPieces } from "./cans.js";
import type { Context } from "./context.js";
import { kindOf } from "./kinds.js";
import { statedConstruction, statedDielectric, statedTaper } from "./materials.js";
import { innerOfCoil, innerOfNetwork, innerOfTapped } from "./networks.js";
import { quantityOf } from "./quantity.js";
import { ratingOf } from "./ratings.js";
import { relativeTolerance, statedTolerance } from "./statedTolerance.js";
import { ofRoles, printedText, type Text, textsOf, valueText } from "./texts.js";
import { clashes, codesOf, kindByCode, withCode } from "./typeDesignation.js";
import { type ReadValues, readValues } from "./value.js";

/** Kinds whose printed volts are windings, not a rating. */
const NO_VOLTS: ReadonlySet<Kind> = new Set(["transformer", "inductor", "switch", "tube"]);

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
  const codes = codesOf(words, record.partNumber);
  const kind = kindByCode(kindOf(record.names, words, heading), codes);
  const code = codes.find((candidate) => candidate.kind === kind) ?? null;
  const materials = {
    construction: statedConstruction(texts, kind) ?? code?.construction ?? null,
    dielectric: statedDielectric(texts, kind) ?? code?.dielectric ?? headingDielectric(kind, heading),
  };
  const ratedVolts = ratingOf(texts, "volts", kind);
  const volts = NO_VOLTS.has(kind) ? [] : ratedVolts.figures;
  const ratedWatts = ratingOf(texts, "watts", kind);
  const watts = ratedWatts.figures[0] ?? code?.watts ?? null;
  const tolerance = statedTolerance(texts, kind);
  const clues = {
    kind,
    dielectric: materials.dielectric ?? (isCan(words) ? "electrolytic" : null),
    volts: volts[0] ?? null,
    watts,
    wirewound: materials.construction === "wirewound",
    toleranceUnit: tolerance.absolute?.unit ?? null,
    isSection: record.names.length > 0 && record.names.every((name) => SECTION_NAME.test(name)),
  };
  const printed = oneForEachName(readValues(texts, clues, context), record.names, kind);
  const read = code ? withCode(printed, code) : printed;
  const can = kind === "capacitor" ? canOf(texts, read, volts, record) : null;
  const inner = innerOf(kind, texts, read, context);
  const absolute = tolerance.absolute;
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
    tolerance: tolerance.tolerance ?? fromAbsolute(absolute, read) ?? (absolute ? null : (code?.tolerance ?? null)),
    watts: NO_WATTS.has(kind) ? null : watts,
    volts: can ? can.volts : (volts[0] ?? null),
    construction: materials.construction,
    dielectric: materials.dielectric,
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
      ...doubts(record, ratedWatts.repaired || (ratedVolts.repaired && volts.length > 0)),
    ],
  };
  const contradicted = new Set<ListedField>(tolerance.warnings.length > 0 ? ["tolerance"] : []);
  return { part, words, heading, contradicted };
}

const SECTION_NAME = /\d[A-F]$/;

/** A can that names no make holds electrolytics. */
const isCan = (words: readonly Words[]) => words.some(({ tokens }) => tokens.some((token) => token.key === "can"));

/** A name or a rating that had to be repaired is said so. */
function doubts(record: ListRecord, rating: boolean): Warning[] {
  const name = cellText(record, "designator").includes("?");
  const found = [
    name ? "the designator follows from the order of the list" : null,
    rating ? "a letter stands for a figure in a rating" : null,
  ];
  return found.flatMap((text) => (text === null ? [] : [{ code: "unreadable" as const, text }]));
}

/** A heading such as ELECTROLYTICS names the make of all capacitors below it. */
function headingDielectric(kind: Kind, heading: Words | null): Dielectric | null {
  if (kind !== "capacitor" || !heading) return null;
  return (heading.meanings.find((meaning) => meaning.field === "dielectric")?.value as Dielectric | undefined) ?? null;
}

/** "2 x 100K" for R1 and R2 is a resistor for each, no tapped one. */
function oneForEachName(read: ReadValues, names: readonly string[], kind: Kind): ReadValues {
  const { list } = read;
  const isEach = kind === "resistor" && list?.length === names.length && new Set(list).size === 1 && list.length > 1;
  return isEach ? { ...read, value: list[0]!, list: null } : read;
}

function canOf(texts: readonly Text[], read: ReadValues, volts: readonly number[], record: ListRecord): Can | null {
  const own = ofRoles(texts, "value", "description", "rating");
  if (read.list) return canOfList(read.list, volts, record.names, printedText(record));
  for (const { words } of own) {
    const can = canOfLabels(words, (label) => label) ?? canOfPieces(words, record.names);
    if (can) return can;
  }
  return canOfGang(valueText(record), read.value ?? read.max, volts, record.names);
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

const fromAbsolute = (absolute: PrintedTolerance | null, read: ReadValues) =>
  absolute && read.value && read.printed ? relativeTolerance(absolute, read.value, read.printed) : null;

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
