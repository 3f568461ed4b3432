import type { Part } from "../part.js";

/** What became of one line of a document: the designators of its parts, a heading or note, or unclear with the reason. */
export type LineReading = {
  readonly number: number;
  readonly text: string;
  readonly became: "part" | "heading or note" | "unclear";
  readonly parts: readonly string[];
  readonly reason: string | null;
};

/** A document as it was understood: its parts (without ids yet), every line accounted for, and what is left to ask. */
export type DocumentReading = {
  readonly parts: readonly Part[];
  readonly lines: readonly LineReading[];
  readonly notes: readonly string[];
  readonly questions: readonly string[];
  readonly capitalM: "thousand" | "million" | null;
};
