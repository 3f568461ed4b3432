import { complete } from "../complete/complete.js";
import { asShare, finished } from "../longWork.js";
import type { ListedPart, Part } from "../part.js";
import type { PartNumberTable } from "../read/parts/partNumberTable.js";
import { type ListReading, readingList } from "../read/readList.js";
import type { SourceLine } from "../read/sourceLine.js";
import type { RulesInForce } from "../rule.js";
import { splitPart } from "../split/splitPart.js";
import { type Doubt, withDoubts } from "./doubts.js";

/** What became of one line of a document: the designators of its parts, a heading or note, or unclear with the reason. */
export type LineReading = {
  readonly number: number;
  readonly text: string;
  readonly became: "part" | "heading or note" | "unclear";
  readonly parts: readonly string[];
  readonly reason: string | null;
};

/**
 * A document as it was understood: its parts (without ids yet) and the line each stands on, every line accounted for, and
 * what is left to ask.
 */
export type DocumentReading = {
  readonly parts: readonly Part[];
  readonly lineOfPart: readonly number[];
  readonly lines: readonly LineReading[];
  readonly notes: readonly string[];
  readonly questions: readonly string[];
  /** Part numbers in place of values that the table of part numbers does not tell. */
  readonly numbersWithoutValue: readonly string[];
  readonly capitalM: "thousand" | "million" | null;
};

/**
 * What bears on how a list is understood: what M means, the year of the set, the rules that name types and uses, what part
 * numbers stand for, and which words of a scan are in doubt.
 */
export type ListAnswers = {
  readonly capitalM: "thousand" | "million" | null;
  readonly era: number | null;
  readonly inForce: RulesInForce;
  readonly doubtful?: readonly Doubt[];
  readonly partNumbers?: PartNumberTable;
};

/**
 * A parts list through the stages in turn: read, split into one part for each designator and section, completed.
 *
 * @example readDocument(lines, { capitalM: null, era: 1948, inForce: DEFAULTS_IN_FORCE }).parts[0].watts // { value: 0.5, from: "note", at: "note 1" }
 */
export function readDocument(lines: readonly SourceLine[], answers: ListAnswers): DocumentReading {
  return finished(readingDocument(lines, answers));
}

/** The share of the time that reading takes; completing what was read takes the rest. */
const READING_SHARE = 0.8;

/** The same in steps, for a long list: yields the share that is done, 0..1. */
export function* readingDocument(
  lines: readonly SourceLine[],
  answers: ListAnswers,
): Generator<number, DocumentReading> {
  const { capitalM, partNumbers } = answers;
  const told = { ...(capitalM ? { capitalM } : {}), ...(partNumbers ? { partNumbers } : {}) };
  const reading = yield* asShare(readingList(lines, told), READING_SHARE);
  const own = withDoubts(reading.parts, answers.doubtful ?? []).flatMap((listed) =>
    splitPart(listed).map((split) => ({ split, line: listed.lines[0] ?? 0 })),
  );
  const parts = own.map(({ split }) =>
    complete(split, {
      id: "",
      document: "",
      inForce: answers.inForce,
      era: answers.era,
    }),
  );
  return {
    parts,
    lineOfPart: own.map(({ line }) => line),
    lines: linesOf(lines, reading),
    notes: reading.notes.map(({ text }) => text),
    questions: reading.questions,
    numbersWithoutValue: reading.numbersWithoutValue,
    capitalM: reading.dialect.capitalM,
  };
}

/** Every filled line of the document with what became of it. */
function linesOf(lines: readonly SourceLine[], reading: ListReading): readonly LineReading[] {
  const parts = new Map<number, ListedPart[]>();
  for (const part of reading.parts) for (const line of part.lines) parts.set(line, [...(parts.get(line) ?? []), part]);
  const unread = new Map(reading.unread.map(({ line, reason }) => [line, reason]));
  return lines
    .flatMap(({ number, text }) => text.split("\n").map((own, i) => ({ number: number + i, text: own })))
    .filter(({ text }) => text.trim() !== "")
    .map(({ number, text }) => {
      const here = parts.get(number) ?? [];
      const names = here.flatMap(({ designators }) => designators);
      if (here.length > 0) return { number, text, became: "part", parts: names, reason: null };
      const reason = unread.get(number) ?? null;
      return { number, text, became: reason ? "unclear" : "heading or note", parts: [], reason };
    });
}
