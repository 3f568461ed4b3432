import { kindNamed } from "../../part.js";
import { attempt } from "../../problem.js";
import { headsOfPaste, type PastedHead } from "./pastedHeads.js";
import { findPart, namesPart, type PasteInto, plainName, sectionNamed } from "./pastedPart.js";
import { rowOfCells, textOfCells } from "./pastedTable.js";
import { type PastedWords, pastedWords } from "./pastedWords.js";

/** What became of one pasted line; no line is lost. */
export type PastedLine = {
  /** Counted from 1. */
  readonly number: number;
  readonly text: string;
  readonly became: "reading" | "heads" | "section" | "empty" | "not understood";
  /** The row of Parts it is about, by its place among the rows given; null for all but a reading. */
  readonly at: number | null;
  readonly said: PastedWords | null;
  /** Why it is not understood, or what else there is to know. */
  readonly reason: string | null;
};

type Line = Pick<PastedLine, "number" | "text">;

/**
 * Many readings from one paste: two columns, lines such as "R12 612k lifted" and "C4 open", a table with heads, or a column
 * of bare figures for the rows in order. Every line comes back with what it means, or why it means nothing.
 *
 * The section holds until a line names another; a designator that stands in it once needs no more. A bare figure takes the
 * printed unit of its part.
 *
 * @example pastedReadings("R12\t612K", { rows, section: "Sound", inOrder: [] })[0]?.became // "reading"
 */
export function pastedReadings(pasted: string, into: PasteInto): readonly PastedLine[] {
  const lines = pasted
    .replace(/\s+$/, "")
    .split(/\r\n|\r|\n/)
    .map((text, index): Line => ({ number: index + 1, text }));
  const first = lines.findIndex(({ text }) => text.trim() !== "");
  const heads = headsOfPaste(lines[first]?.text ?? "");
  if (heads) return tableOf(lines, heads, first, into);
  return lines.some(({ text }) => namesPart(text, into)) ? namedLines(lines, into) : bareLines(lines, into);
}

const empty = (line: Line): PastedLine => ({ ...line, became: "empty", at: null, said: null, reason: null });
const failed = (line: Line, reason: string): PastedLine => ({
  ...line,
  became: "not understood",
  at: null,
  said: null,
  reason,
});

/** A text behind a designator as a reading of its row. */
function understood(line: Line, text: string, at: number, { rows }: PasteInto): PastedLine {
  const row = rows[at]!;
  return attempt<PastedLine, PastedLine>(
    () => ({ ...line, became: "reading", at, said: pastedWords(text, row.value, kindNamed(row.kind)), reason: null }),
    (error) => failed(line, error.message),
  );
}

function namedLines(lines: readonly Line[], into: PasteInto): readonly PastedLine[] {
  let { section } = into;
  return lines.map((line): PastedLine => {
    if (line.text.trim() === "") return empty(line);
    const named = sectionNamed(line.text, into);
    if (named !== null) {
      section = named;
      return { ...line, became: "section", at: null, said: null, reason: null };
    }
    const found = findPart(line.text, { ...into, section });
    return "reason" in found ? failed(line, found.reason) : understood(line, found.rest, found.at, into);
  });
}

/** A column of bare figures: the rows in order; an empty line passes its row over, and so does a dash. */
function bareLines(lines: readonly Line[], into: PasteInto): readonly PastedLine[] {
  return lines.map((line, index): PastedLine => {
    const at = into.inOrder[index];
    if (/^[\s–-]*$/.test(line.text)) return empty(line);
    if (at === undefined) return failed(line, "No part is left for it: write its designator in front.");
    return understood(line, line.text, at, into);
  });
}

function tableOf(
  lines: readonly Line[],
  heads: readonly PastedHead[],
  first: number,
  into: PasteInto,
): readonly PastedLine[] {
  const unused = heads.filter(({ role }) => role === "unused").map(({ head }) => head);
  let { section } = into;
  return lines.map((line, index): PastedLine => {
    if (line.text.trim() === "") return empty(line);
    if (index === first) {
      const reason = unused.length > 0 ? `Not used: ${unused.join(", ")}` : null;
      return { ...line, became: "heads", at: null, said: null, reason };
    }
    const row = rowOfCells(line.text, heads);
    section = sectionNamed(row.section, into) ?? section;
    const found = row.id
      ? { at: into.rows.findIndex(({ id }) => plainName(id) === plainName(row.id)) }
      : findPart(row.part, { ...into, section });
    if ("reason" in found) return failed(line, found.reason);
    if (found.at < 0) return failed(line, `No part has the id ${row.id}.`);
    return understood(line, textOfCells(row), found.at, into);
  });
}
