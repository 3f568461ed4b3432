import type { Construction, Dielectric, Kind } from "../../part.js";
import type { ListRecord } from "../records/listRecord.js";
import type { DecodedCode } from "../words/codes.js";
import type { Words } from "../words/words.js";
import { type Can, canOfGang, canOfLabels, canOfList, canOfPieces } from "./cans.js";
import type { Context } from "./context.js";
import { kindOf } from "./kinds.js";
import { statedConstruction, statedDielectric } from "./materials.js";
import { ratingOf } from "./ratings.js";
import { type ReadTolerance, statedTolerance } from "./statedTolerance.js";
import { ofRoles, printedText, type Text, valueText } from "./texts.js";
import { codesOf, kindByCode, withCode } from "./typeDesignation.js";
import { type ReadValues, readValues } from "./value.js";

/**
 * What a line states of a part's kind, make and figures, in base units; `code` is the type designation that stands for what
 * words leave out, `repaired` where a letter of a rating had to be read as a figure.
 */
export type StatedFigures = {
  readonly kind: Kind;
  readonly code: DecodedCode | null;
  readonly construction: Construction | null;
  readonly dielectric: Dielectric | null;
  readonly volts: readonly number[];
  readonly watts: number | null;
  readonly repaired: boolean;
  readonly tolerance: ReadTolerance;
  readonly read: ReadValues;
  readonly can: Can | null;
};

/** Kinds whose printed volts are windings, not a rating. */
const NO_VOLTS: ReadonlySet<Kind> = new Set(["transformer", "inductor", "switch", "tube"]);

/** The words of a part's own cells, and those of the heading above it. */
type Said = { readonly words: readonly Words[]; readonly heading: Words | null };

/** The kind that a part is, and the figures that its texts state: each is a clue for reading the ones behind it. */
export function statedFigures(
  record: ListRecord,
  texts: readonly Text[],
  { words, heading }: Said,
  context: Context,
): StatedFigures {
  const codes = codesOf(words, record.partNumber);
  const kind = kindByCode(kindOf(record.names, words, heading), codes);
  const code = codes.find((candidate) => candidate.kind === kind) ?? null;
  const construction = statedConstruction(texts, kind) ?? code?.construction ?? null;
  const dielectric = statedDielectric(texts, kind) ?? code?.dielectric ?? headingDielectric(kind, heading);
  const ratedVolts = ratingOf(texts, "volts", kind);
  const volts = NO_VOLTS.has(kind) ? [] : ratedVolts.figures;
  const ratedWatts = ratingOf(texts, "watts", kind);
  const watts = ratedWatts.figures[0] ?? code?.watts ?? null;
  const repaired = ratedWatts.repaired || (ratedVolts.repaired && volts.length > 0);
  const tolerance = statedTolerance(texts, kind);
  const clues = {
    kind,
    dielectric: dielectric ?? (isCan(words) ? "electrolytic" : null),
    volts: volts[0] ?? null,
    watts,
    wirewound: construction === "wirewound",
    toleranceUnit: tolerance.absolute?.unit ?? null,
    isSection: record.names.length > 0 && record.names.every((name) => SECTION_NAME.test(name)),
  };
  const printed = oneForEachName(readValues(texts, clues, context), record.names, kind);
  const read = code ? withCode(printed, code) : printed;
  const can = kind === "capacitor" ? canOf(texts, read, volts, record) : null;
  return { kind, code, construction, dielectric, volts, watts, repaired, tolerance, read, can };
}

const SECTION_NAME = /\d[A-F]$/;

/** A can that names no make holds electrolytics. */
const isCan = (words: readonly Words[]) => words.some(({ tokens }) => tokens.some((token) => token.key === "can"));

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
