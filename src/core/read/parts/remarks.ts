import type { ListedPart } from "../../part.js";
import type { Note } from "../layout/row.js";
import { designatorsAt } from "../records/designators.js";
import { readWords } from "../words/readWords.js";
import type { Amount, Words } from "../words/words.js";
import type { Context } from "./context.js";
import { inBase } from "./inBase.js";
import { type Stated, statedPart } from "./statedPart.js";

const NAME = /\b[A-Z]{1,3}-?\d{1,4}[A-Z]?\b/;
const CORRECTION =
  /\b(?:should (?:read|be)|read|change(?:d)?\b[^.]{0,60}\bto|is now|correct(?:ed)? to|instead of|to read)\b/i;
const ADDITION = /^(?:page\s+\d+\s+)?add(?:ed)?[:,]?\s/i;

/** Parts that stand on a slip alone: "Add R51, composition, 100 ohms, 1/2 W, between R48 and grid of V31". */
export function additionsOf(remarks: readonly Note[], listed: readonly Stated[], context: Context): Stated[] {
  const parts = listed.map((entry) => entry.part);
  return remarks.flatMap((remark) => (ADDITION.test(remark.text) ? (addition(remark, parts, context) ?? []) : []));
}

/** Parts with what remarks below the list, errata and footnotes say of them. */
export function withRemarks(parts: readonly ListedPart[], remarks: readonly Note[], context: Context): ListedPart[] {
  const own = remarks.filter((remark) => !ADDITION.test(remark.text));
  return own.reduce((all, remark) => apply(all, remark, context), [...parts]);
}

/** Where the last part of a name stands in the list, or -1. */
const lastNamed = (parts: readonly ListedPart[], name: string | undefined) =>
  parts.reduce((last, part, at) => (name !== undefined && part.designators.includes(name) ? at : last), -1);

/** A remark that names one part, or a star's that is already among the lines of the one part pointing to it. */
function apply(parts: readonly ListedPart[], remark: Note, context: Context): ListedPart[] {
  const name = NAME.exec(remark.text)?.[0];
  const star = /^\*+\s+(?![A-Z]{1,3}-?\d)/.test(remark.text);
  const at = star
    ? parts.findIndex(({ lines }) => remark.lines.every((line) => lines.includes(line)))
    : lastNamed(parts, name);
  if (at < 0) return [...parts];
  const part = parts[at]!;
  const lines = star ? part.lines : [...part.lines, ...remark.lines];
  const words = readWords(remark.text.replace(name ?? "", ""), context.writing);
  const changed =
    CORRECTION.test(remark.text) && !star
      ? corrected(part, words, context)
      : star
        ? permitted(part, words, context)
        : nominal(part, words, context);
  return parts.map((own, i) => (i === at ? { ...changed, lines } : own));
}

const clues = (part: ListedPart) => ({
  kind: part.kind, head: null, dielectric: part.dielectric, volts: part.volts, watts: part.watts,
  wirewound: part.construction === "wirewound", toleranceUnit: null,
}); // biome-ignore format: a table

function valuesOf(part: ListedPart, words: Words, context: Context): number[] {
  const united = words.amounts.filter((amount: Amount) => amount.figures[0]!.unit !== null);
  const figures = united.flatMap((amount) => amount.figures);
  return figures.flatMap((figure) => inBase(figure, words, clues(part), context)?.value ?? []);
}

/** The slip's value stands; a reader must know that list and slip differ. */
function corrected(part: ListedPart, words: Words, context: Context): ListedPart {
  const value = valuesOf(part, words, context).at(-1);
  if (value === undefined) return part;
  const text = `a correction in the document changes the value printed in the list (${part.valueText})`;
  return { ...part, value, valueState: "stated", warnings: [...part.warnings, { code: "conflict", text }] };
}

/** "2.4K may be supplied in place of 2.2K." */
function permitted(part: ListedPart, words: Words, context: Context): ListedPart {
  const others = valuesOf(part, words, context).filter((value) => value !== part.value);
  if (part.value === null || others.length === 0) return part;
  const all = [part.value, ...others];
  return { ...part, valueState: "alternatives", valueMin: Math.min(...all), valueMax: Math.max(...all) };
}

/** "R13: 22k nominal." */
function nominal(part: ListedPart, words: Words, context: Context): ListedPart {
  const isNominal = words.meanings.some((meaning) => meaning.value === "nominal");
  const value = isNominal ? valuesOf(part, words, context)[0] : undefined;
  return value === undefined ? part : { ...part, value };
}

function addition(remark: Note, parts: readonly ListedPart[], context: Context): Stated | null {
  const name = NAME.exec(remark.text)!;
  const found = name && designatorsAt(remark.text, name.index);
  if (!found) return null;
  const rest = remark.text.slice(found.end).replace(/^[,\s]+/, "");
  const between = NAME.exec(rest.slice(rest.search(/\b(?:between|near|after|across|from)\b/)))?.[0];
  const neighbour = parts[lastNamed(parts, between)];
  const cells = [
    { role: "designator", text: found.names.join(", "), unit: null },
    { role: "description", text: rest.replace(/,?\s*\bbetween\b[^.]*/, ""), unit: null },
  ] as const;
  const section = neighbour?.section ?? remark.section;
  const record = {
    lines: remark.lines,
    cells,
    section,
    heading: null,
    table: -1,
    names: found.names,
    partNumber: null,
    borrowed: new Set<never>(),
  };
  return statedPart(record, context);
}
