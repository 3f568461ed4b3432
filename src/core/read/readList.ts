import { finished } from "../longWork.js";
import type { ListedPart } from "../part.js";
import { readLayout } from "./layout/readLayout.js";
import type { Note } from "./layout/row.js";
import { clausesOf } from "./notes/clauses.js";
import { defaultsOf } from "./notes/defaults.js";
import { dialectOf, evidenceOf } from "./notes/dialect.js";
import { bareUnitsOf } from "./notes/units.js";
import type { Context, Dialect } from "./parts/context.js";
import { finishParts } from "./parts/finishParts.js";
import { numbersWithoutValue, type PartNumberTable, withPartNumbers } from "./parts/partNumberTable.js";
import { statedPart } from "./parts/statedPart.js";
import { ofRoles, textsOf } from "./parts/texts.js";
import { designatorsOf } from "./records/designators.js";
import { withFootnotes } from "./records/footnotes.js";
import { isNoisy, noisyDesignators } from "./records/noise.js";
import { withoutNumberTables } from "./records/numberTables.js";
import { resolveRows } from "./records/resolveRows.js";
import type { SourceLine } from "./sourceLine.js";
import { writingOf } from "./words/writing.js";

/** What a reader may be told: what capital M means in this document, and values by part number. */
export type ReadOptions = {
  readonly capitalM?: "thousand" | "million";
  readonly partNumbers?: PartNumberTable;
};

/**
 * A parts list read: its parts in the order of their lines, and what became of every other line.
 *
 * `furniture` are headings, notes, page heads; `unread` are lines of which nothing could be made, with the reason.
 * `questions` are what only a person can settle; `numbersWithoutValue` are part numbers that stand in place of a value and that
 * no table explains.
 */
export type ListReading = {
  readonly parts: readonly ListedPart[];
  readonly furniture: readonly number[];
  readonly unread: readonly { readonly line: number; readonly reason: string }[];
  readonly notes: readonly Note[];
  readonly dialect: Dialect;
  readonly questions: readonly string[];
  readonly numbersWithoutValue: readonly string[];
};

/**
 * A parts list in any of the trade's forms, read line by line; each filled line ends in a part, in furniture or unread.
 *
 * Lines are taken apart into cells, cells filled from the rows above, words read, and parts put together with the
 * document's notes; the meaning of capital M is settled once, over the whole document. Never throws.
 *
 * @example readList([{ number: 1, text: "R1  470K  1/2 W", cells: null }]).parts[0]!.value // 470000
 */
export function readList(printed: readonly SourceLine[], options: ReadOptions = {}): ListReading {
  return finished(readingList(printed, options));
}

/** The same in steps, for a long list: yields the share of the time that a step usually ends at, 0..1. */
export function* readingList(printed: readonly SourceLine[], options: ReadOptions): Generator<number, ListReading> {
  const lines = printed.map(withPlainSigns);
  const noisy = isNoisy(lines);
  const readName = noisy ? noisyDesignators : designatorsOf;
  const layout = readLayout(lines, readName);
  yield 0.4;
  const { parts: listedRows, ...numbers } = withoutNumberTables(resolveRows(layout.rows, layout.notes, readName));
  const records = withFootnotes(listedRows, [...layout.notes, ...layout.remarks]);
  yield 0.5;
  const writing = writingOf(lines, noisy);
  const clauses = clausesOf(layout.notes, writing);
  const texts = records.map((record) => textsOf(record, writing));
  yield 0.6;
  const valued = texts.flatMap((own) => ofRoles(own, "value", "description"));
  const evidence = evidenceOf(
    valued.map((text) => text.words),
    valued.map((text) => text.head),
  );
  const dialect = dialectOf(layout.notes, evidence, options.capitalM);
  const context: Context = { writing, dialect, units: bareUnitsOf(clauses) };
  yield 0.65;
  const stated = records.map((record, i) => statedPart(record, context, texts[i]));
  yield 0.85;
  const listed = withPartNumbers(stated, records, { own: numbers.described, table: options.partNumbers }, context);
  const parts = finishParts(listed, defaultsOf(clauses), layout.remarks, context);
  return {
    parts,
    ...accountFor(lines, parts, [...layout.furniture, ...numbers.lines]),
    notes: layout.notes,
    dialect,
    questions: questionsOf(dialect, parts),
    numbersWithoutValue: numbersWithoutValue(parts, options.partNumbers),
  };
}

const ODD_BLANK = /[\u00a0\u2000-\u200a\u202f]/g;
/** The raised point of British printers: 0·1, ·005. */
const RAISED_POINT = /(?<=\d|^|[\s(])[·∙](?=\d)/g;
/** The apostrophe before thousands of Swiss printers: 1'500. */
const RAISED_COMMA = /(?<=\d)['’](?=\d{3}(?!\d))/g;
const ODD = /[\u00a0\u2000-\u200a\u202f·∙]|\d['’]\d/;

const plainSigns = (text: string) => text.replace(ODD_BLANK, " ").replace(RAISED_POINT, ".").replace(RAISED_COMMA, "");

/** Blanks that a typesetter or a web page made wide, narrow or unbreakable are blanks; raised marks are those of figures. */
const withPlainSigns = (line: SourceLine): SourceLine =>
  line.text.search(ODD) < 0
    ? line
    : { ...line, text: plainSigns(line.text), cells: line.cells?.map(plainSigns) ?? null };

/** Where each filled line ended that is in no part. */
function accountFor(lines: readonly SourceLine[], parts: readonly ListedPart[], furniture: readonly number[]) {
  const inParts = new Set(parts.flatMap((part) => part.lines));
  const left = new Set(furniture);
  const filled = lines.flatMap(({ number, text }) =>
    text.split("\n").flatMap((own, i) => (own.trim() === "" ? [] : [number + i])),
  );
  const missing = filled.filter((line) => !inParts.has(line) && !left.has(line));
  return {
    furniture: [...left].filter((line) => !inParts.has(line)).sort((a, b) => a - b),
    unread: missing.map((line) => ({
      line,
      reason: "Nothing in this line could be read as a part, a heading or a note.",
    })),
  };
}

function questionsOf(dialect: Dialect, parts: readonly ListedPart[]): string[] {
  const unsure = parts.filter((part) => part.warnings.some((warning) => warning.code === "ambiguous-m"));
  if (unsure.length === 0) return [];
  const names = unsure
    .slice(0, 5)
    .flatMap((part) => part.designators.slice(0, 1))
    .join(", ");
  const known = dialect.capitalM ? `It is taken as ${dialect.capitalM}.` : "Nothing in the list settles it.";
  return [`Does a capital M in this list mean thousand or million (${names})? ${known}`];
}
