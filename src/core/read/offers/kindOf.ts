import type { Kind } from "../../part.js";
import { fold } from "./fold.js";
import { KIND_WORDS } from "./kindWords.js";
import { remembering, shapeOf } from "./remember.js";
import type { RowTexts } from "./rowTexts.js";
import { INSTEAD_OF, TECHNOLOGY_WORDS, type TechnologyRow } from "./technologyWords.js";

const WITH =
  /\b(with|w\/|incl\w*|avec|met|mit|sans|zonder|ohne|for|pour|voor|fur|replaces|ersetzt|remplace|vervangt)\b[^,;]*/g;

/** The kind of part that the nouns of a description name, or null. What a part comes with or is for is not it. */
export function namedKind(description: string): Kind | null {
  return kindOfShape(shapeOf(description)).kind;
}

const kindOfShape = remembering((shape) => {
  const words = fold(shape);
  const itself = words.replace(WITH, " ");
  return { kind: kindIn(itself) ?? kindIn(words) };
});

const kindIn = (words: string) => KIND_WORDS.find(([, noun]) => noun.test(words))?.[0] ?? null;

/** All that may tell the kind of a row's part. */
export type KindEvidence = {
  readonly description: string;
  readonly texts: RowTexts;
  readonly codeKind: Kind | null;
  readonly safetyClass: string | null;
  readonly headingKind: Kind | null;
};

/**
 * The kind of part a row offers: by its nouns, a type designation, the column its value stands in, a safety class, its
 * unit, what only one kind is made of, and at last the heading above it. Else it is something other.
 */
export function kindOfRow({ description, texts, codeKind, safetyClass, headingKind }: KindEvidence): Kind {
  const built = `${texts.joined("technology", "body", "kind")}; ${description}`;
  const byUnit = kindOfUnit(description.replace(DIODE_TYPE, " "));
  const [named, sorted] = [namedKind(description), namedKind(texts.joined("kind"))];
  const isSwitchOfControl = named === "switch" && sorted === "potentiometer";
  return (
    (named === "potentiometer" && byUnit === "capacitor" ? byUnit : isSwitchOfControl ? sorted : named) ??
    sorted ??
    (DIODE_TYPE.test(description) ? "rectifier" : null) ??
    codeKind ??
    kindOfColumns(texts) ??
    (safetyClass ? "capacitor" : null) ??
    (byUnit === "resistor" ? null : byUnit) ??
    impliedKind(built) ??
    byUnit ??
    headingKind ??
    kindOfRatings(description) ??
    "other"
  );
}

/**
 * Type numbers that name a diode or rectifier: one junction by JEDEC (1N4007), Pro Electron's first letters (AA119, BY127),
 * older European ones (OA81, B250C75), and the fast ones made everywhere (UF4007).
 *
 * @source JEDEC EIA-370, Pro Electron D15 for the letters; B..C.. and UF.. are common practice
 */
const DIODE_TYPE = /\b(?:1N\d{2,4}[A-Z]?|[AB]A[VWXY]?\d{3}|BY[VWXY]?\d{2,3}|OA\d{1,3}|UF\d{4}|B\d{2,3}C\d{2,4})\b/;

/** A column of its own for resistance, capacitance or inductance, filled in this row, tells the kind. */
function kindOfColumns(texts: RowTexts): Kind | null {
  if (texts.first("resistance")) return "resistor";
  if (texts.first("capacitance")) return "capacitor";
  return texts.first("inductance") ? "inductor" : null;
}

const UNITS: readonly (readonly [Kind, RegExp])[] = [
  ["capacitor", /\d\s?(?:[munpµμ]f|mfd|mmfd?|uuf)\b|\d[npµμ]\d/i],
  ["inductor", /\d\s?(?:[mµμu]?h|hy)\b/i],
  ["resistor", /\d\s?(?:[kM]?(?:Ω|ohms?\b)|meg)/i],
];

const kindOfUnit = (text: string) => UNITS.find(([, unit]) => unit.test(text))?.[0] ?? null;

/** Watts are said of resistors, a bare fraction and volts of capacitors. */
function kindOfRatings(description: string): Kind | null {
  if (/\d\s?(?:w|watts?)\b/i.test(description)) return "resistor";
  return /(?:^|\s)(?:0?\.\d+\s*(?:\/|@|\s)\s*\d{2,5}|\d+\s*\/\s*\d{2,3})\b/.test(description) ? "capacitor" : null;
}

/** The kind that what a part is made of tells, where only one kind is made of it. */
function impliedKind(description: string): Kind | null {
  const said = technologyRows(shapeOf(description)).map(([, , of]) => of);
  if (said.some((of) => of.includes("potentiometer"))) return "resistor";
  return said.find((of) => of.length === 1)?.[0] ?? said.find((of) => of.length === 2)?.[0] ?? null;
}

const technologyRows = remembering((shape): readonly TechnologyRow[] => {
  const words = fold(shape);
  return TECHNOLOGY_WORDS.filter(([, pattern]) => pattern.test(words));
});

/** The words for material and body that a text says of a part of this kind, each once. @example technologyOf("MKP axiaal", "capacitor") */
export function technologyOf(text: string, kind: Kind): string[] {
  const rows = technologyRows(shapeOf(text)).filter(([, , of]) => of.includes(kind));
  const said = new Set(rows.flatMap(([means]) => means));
  for (const [more, less] of Object.entries(INSTEAD_OF)) if (said.has(more)) for (const word of less) said.delete(word);
  return [...said];
}
