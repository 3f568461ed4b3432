import { designatorsAt } from "../records/designators.js";
import type { SourceLine } from "../sourceLine.js";
import { joinBroken } from "./continuation.js";
import type { ListRow, RowCell } from "./row.js";

/** Rows found in running text, and the lines they were taken from. */
export type Prose = { readonly rows: readonly ListRow[]; readonly lines: ReadonlySet<number> };

/** A paragraph as one text: `starts` are the places where its lines begin. */
type Paragraph = { readonly text: string; readonly starts: readonly { readonly at: number; readonly line: number }[] };

/** An item of running text begins behind one of these. */
const BOUNDARY = /(?:^|[;:.]\s+(?:also\s+)?|,\s+and\s+(?=\d+\s+off\b))/gi;
const COUNT = /^(\d+)\s+off\s+/;
const FOR_SECTION = /^\s*(?:for|in) the\s+([A-Z][A-Za-z0-9 .&/-]*?)\s*[.:]/i;
const TABLE = -2;

/**
 * The parts of paragraphs that list several parts one after the other ("R1, R5 470K; R2 2.2 meg; ..."), each an item
 * with all the lines it touches. "For the AMPLIFIER." opens a section that holds until the next.
 */
export function readProse(lines: readonly SourceLine[]): Prose {
  const rows: ListRow[] = [];
  const taken = new Set<number>();
  let section: string | null = null;
  for (const paragraph of paragraphsOf(lines)) {
    const starts = itemStarts(paragraph.text);
    if (!isList(paragraph, starts)) continue;
    section = FOR_SECTION.exec(paragraph.text)?.[1]?.trim() ?? section;
    for (const { line } of paragraph.starts) taken.add(line);
    starts.forEach((start, i) => {
      const end = starts[i + 1] ?? paragraph.text.length;
      rows.push(rowOf(paragraph, start, end, section));
    });
  }
  return { rows, lines: taken };
}

function paragraphsOf(lines: readonly SourceLine[]): Paragraph[] {
  const paragraphs: Paragraph[] = [];
  let open: { text: string; starts: { at: number; line: number }[] } | null = null;
  for (const { number, text, cells } of lines) {
    const own = text.trim();
    if (own === "" || cells || /\t| {3,}\S|\|/.test(own)) {
      open = null;
      continue;
    }
    if (open === null) {
      open = { text: "", starts: [] };
      paragraphs.push(open);
    }
    const joined: string = joinBroken(open.text, own);
    open.starts.push({ at: joined.length - own.length, line: number });
    open.text = joined;
  }
  return paragraphs;
}

/** Where items begin: at designators or "4 off" behind a boundary. */
function itemStarts(text: string): number[] {
  return [...text.matchAll(BOUNDARY)]
    .map((match) => match.index + match[0].length)
    .filter((at) => designatorsAt(text, at) !== null || COUNT.test(text.slice(at, at + 12)));
}

const FEWEST_ITEMS = 3;

/** A paragraph is a list of its own when it holds more items than lines, or begins more of them inside its lines. */
function isList(paragraph: Paragraph, starts: readonly number[]): boolean {
  const lineStarts = new Set(paragraph.starts.map((start) => start.at));
  const inside = starts.filter((at) => !lineStarts.has(at)).length;
  return starts.length >= FEWEST_ITEMS && inside * 2 >= starts.length && inside >= 2;
}

function rowOf(paragraph: Paragraph, start: number, end: number, section: string | null): ListRow {
  const text = paragraph.text.slice(start, end).replace(/(?:[;:.]\s*(?:also\s*)?|,\s+and\s*)$/i, "");
  const found = designatorsAt(text);
  const count = COUNT.exec(text);
  const cells: RowCell[] = [];
  if (found) cells.push({ role: "designator", text: text.slice(0, found.end), unit: null });
  if (count) cells.push({ role: "quantity", text: count[1]!, unit: null });
  const rest = text.slice(found?.end ?? count?.[0].length ?? 0).replace(/^[\s,:=-]+/, "");
  if (rest !== "") cells.push({ role: "description", text: rest, unit: null });
  return { lines: linesFrom(paragraph, start, start + text.length), cells, section, heading: null, table: TABLE };
}

function linesFrom(paragraph: Paragraph, from: number, to: number): number[] {
  return paragraph.starts.flatMap(({ at, line }, i) => {
    const next = paragraph.starts[i + 1]?.at ?? Number.POSITIVE_INFINITY;
    return at < to && next > from ? [line] : [];
  });
}
