import { designatorsAt } from "../records/designators.js";
import type { SourceLine } from "../sourceLine.js";
import { joinBroken } from "./continuation.js";
import { isKindHeading, sectionName } from "./headings.js";
import type { ListRow, Note, RowCell } from "./row.js";

/** Rows found in running text, what stands before the first of a paragraph, and the lines they were taken from. */
export type Prose = {
  readonly rows: readonly ListRow[];
  readonly notes: readonly Note[];
  readonly lines: ReadonlySet<number>;
};

/** A paragraph as one text: `starts` are the places where its lines begin. */
type Paragraph = { readonly text: string; readonly starts: readonly { readonly at: number; readonly line: number }[] };

/** An item of running text begins behind one of these. */
const BOUNDARY = /(?:^|[;:.]\s+(?:[-–—]\s+)?(?:also\s+)?|,\s+and\s+(?=\d+\s+off\b))/gi;
/** It may begin behind one of these, where the item before says something already and a value follows the name. */
const CLOSE = /,\s+|\s+and\s+(?=\S+,)/gi;
const VALUED =
  /^\s*[=:,]?\s*(?:[\d.½¼]|omit|not |same |as |select|nominal|see )|^\s+(?:\w+\s)?(?:tube|valve|choke|coil|transformer|switch|lamp|fuse|rectifier|diode)s?\b/i;
/** Behind wide blanks anything may follow it. */
const APART = /\s{2,}/g;
const COUNT = /^(\d+)\s+off\s+/;
const FOR_SECTION = /^\s*(?:for|in) the\s+([A-Z][A-Za-z0-9 .&/-]*?)\s*[.:]/i;
const TABLE = -2;

/**
 * The parts of paragraphs that list several parts one after the other ("R1, R5 470K; R2 2.2 meg; ..."), each an item
 * with all the lines it touches. "For the AMPLIFIER." opens a section that holds until the next.
 */
export function readProse(lines: readonly SourceLine[]): Prose {
  const rows: ListRow[] = [];
  const notes: Note[] = [];
  const taken = new Set<number>();
  let section: string | null = null;
  for (const paragraph of paragraphsOf(lines)) {
    const starts = itemStarts(paragraph);
    if (!isList(paragraph, starts)) continue;
    for (const { line } of paragraph.starts) taken.add(line);
    const before = paragraph.text.slice(0, starts[0]).trim();
    const named = FOR_SECTION.exec(paragraph.text)?.[1]?.trim() ?? null;
    const kind = isKindHeading(before.split(",")[0]!) ? before : null;
    const heading = named || kind ? null : sectionName(before);
    section = named ?? heading ?? section;
    if (before !== "" && heading === null)
      notes.push({ lines: linesFrom(paragraph, 0, before.length), text: before, section });
    starts.forEach((start, i) => {
      const end = starts[i + 1] ?? paragraph.text.length;
      rows.push({ ...rowOf(paragraph, start, end), section, heading: kind });
    });
  }
  return { rows, notes, lines: taken };
}

function paragraphsOf(lines: readonly SourceLine[]): Paragraph[] {
  const paragraphs: Paragraph[] = [];
  let open: { text: string; starts: { at: number; line: number }[] } | null = null;
  for (const { number, text, cells } of lines) {
    const own = text.trim();
    if (own === "" || cells || /\t| {3,}\S|\||\.{3}|(?: \.){3}/.test(own)) {
      open = null;
      continue;
    }
    if (open === null || isHeading(own) || isLabelled(own)) {
      open = { text: "", starts: [] };
      paragraphs.push(open);
    }
    const joined: string = joinBroken(open.text, own);
    open.starts.push({ at: joined.length - own.length, line: number });
    open.text = joined;
  }
  return paragraphs;
}

/** A line of its own that names a section: "(Power amp)", "POWER UNIT", "Output stage:". */
const isHeading = (text: string) => /^\([^()]*\)$|^[^a-z]*$|:$/.test(text) && sectionName(text) !== null;

/** "Stage 2: R1 470k, R2 1k": a line that begins with the name of the section of what follows. */
function isLabelled(text: string): boolean {
  const [label = "", rest] = text.split(/:\s+(.*)/s, 2);
  return rest !== undefined && sectionName(label) !== null && !isKindHeading(label) && designatorsAt(rest) !== null;
}

/** Where items begin: at designators or "4 off" behind a boundary. */
function itemStarts({ text, starts: lines }: Paragraph): number[] {
  const ends = (pattern: RegExp) => [...text.matchAll(pattern)].map((match) => match.index + match[0].length);
  const firm = ends(BOUNDARY).filter((at) => designatorsAt(text, at) !== null || COUNT.test(text.slice(at, at + 12)));
  const close = [...ends(CLOSE), ...lines.map((line) => line.at)].filter((at) => VALUED.test(behindNames(text, at)));
  const apart = ends(APART).filter((at) => /^\s*[=:]?\s*\w/.test(behindNames(text, at)));
  const starts: number[] = [];
  for (const at of [...new Set([...firm, ...close, ...apart])].sort((a, b) => a - b)) {
    const last = starts.at(-1);
    const isSaid = last === undefined || /\w/.test(behindNames(text.slice(0, at), last));
    if (firm.includes(at) || isSaid) starts.push(at);
  }
  return starts;
}

/** What stands behind the designators at a place; empty where there are none. */
function behindNames(text: string, at: number): string {
  const found = designatorsAt(text, at);
  return found ? text.slice(found.end) : "";
}

const FEWEST_ITEMS = 3;

/** A paragraph is a list of its own when it holds more items than lines, or begins more of them inside its lines. */
function isList(paragraph: Paragraph, starts: readonly number[]): boolean {
  const lineStarts = new Set(paragraph.starts.map((start) => start.at));
  const inside = starts.filter((at) => !lineStarts.has(at)).length;
  return starts.length >= FEWEST_ITEMS && inside * 2 >= starts.length && inside >= 2;
}

function rowOf(paragraph: Paragraph, start: number, end: number): Omit<ListRow, "section" | "heading"> {
  const text = paragraph.text
    .slice(start, end)
    .replace(/(?:[;:.]\s*(?:also\s*|[A-Z][A-Za-z]+\s*(?:\.\s*[-–—]|:)\s*)?|,\s*(?:and\s*)?)$/i, "");
  const found = designatorsAt(text);
  const count = COUNT.exec(text);
  const cells: RowCell[] = [];
  if (found) cells.push({ role: "designator", text: text.slice(0, found.end), unit: null });
  if (count) cells.push({ role: "quantity", text: count[1]!, unit: null });
  const rest = text
    .slice(found?.end ?? count?.[0].length ?? 0)
    .replace(/^[\s,:.-]+(?!\d)|^[\s,:-]+|^\s*=\s*(?![A-Z]{1,3}-?\d)/, "");
  if (rest !== "") cells.push({ role: "description", text: rest, unit: null });
  return { lines: linesFrom(paragraph, start, start + text.length), cells, table: TABLE };
}

function linesFrom(paragraph: Paragraph, from: number, to: number): number[] {
  return paragraph.starts.flatMap(({ at, line }, i) => {
    const next = paragraph.starts[i + 1]?.at ?? Number.POSITIVE_INFINITY;
    return at < to && next > from ? [line] : [];
  });
}
