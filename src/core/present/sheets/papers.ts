/** TABLE: the sheets that say where parts come from and what was read of them: Projects, Documents, Lines, Readings, Drift. */
import { POLICY_WORDS } from "../../rules/ruleWords.js";
import { amount, named, number, text, word, yes } from "../column.js";
import { type RowOf, sheet } from "../sheet.js";
import { IN_VOLTS, PIECES, RATIO, SIZE, VOLTS } from "./formats.js";
import { IN_PLACE } from "./parts.js";

const yours = { tint: "yours" } as const;
const printed = { tint: "printed" } as const;

/** Where a set stands: open, waiting for its owner, or finished (its formulas are values). */
export const PROJECT_STATES = ["open", "on hold", "closed"] as const;

/** Projects: one row a set on the bench. */
export const PROJECTS_SHEET = sheet("Projects", 2, {
  short: text("set", { ...yours, width: 60 }),
  name: text("name", { ...yours, width: 200 }),
  chassis: text("chassis and run", { ...yours, width: 130 }),
  owner: text("owner", { ...yours, width: 120 }),
  howFar: named("how far to go", POLICY_WORDS, { ...yours, width: 190 }),
  voltsLabel: amount("line volts on the label", VOLTS, IN_VOLTS, { ...yours, width: 120 }),
  voltsNow: amount("line volts at your outlet", VOLTS, IN_VOLTS, { ...yours, width: 120 }),
  hertz: number("line hertz", "0", { ...yours, width: 76 }),
  era: text("era", { ...yours, width: 70 }),
  liveChassis: yes("live chassis", { ...yours, width: 80 }),
  pictureTube: yes("picture tube", { ...yours, width: 80 }),
  changedBefore: text("changed before you", { ...yours, width: 180 }),
  state: word("state", PROJECT_STATES, { ...yours, width: 70 }),
  rules: text("rules in force", { tint: "worked", live: true, width: 160 }),
});
export type ProjectsRow = RowOf<typeof PROJECTS_SHEET>;

/** Documents: one row a parts list; what M means and the page notes stand here and are yours to change. */
export const DOCUMENTS_SHEET = sheet("Documents", 2, {
  project: text("set", { ...printed, width: 60 }),
  document: text("document", { ...printed, width: 160 }),
  title: text("title", { ...yours, width: 240 }),
  edition: text("edition", { ...yours, width: 100 }),
  capitalM: word("M means", ["thousand", "million"], { ...yours, width: 90 }),
  notes: text("page notes", { ...printed, width: 420 }),
  questions: text("open questions", { tint: "worked", width: 260 }),
});
export type DocumentsRow = RowOf<typeof DOCUMENTS_SHEET>;

/** What can become of a line of a document. */
export const BECAME = ["part", "heading or note", "unclear"] as const;

/** Lines: every line of every document, and what became of it. */
export const LINES_SHEET = sheet("Lines", 3, {
  project: text("set", { ...printed, width: 60 }),
  document: text("document", { ...printed, width: 110 }),
  line: number("line", PIECES, { ...printed, width: 50 }),
  text: text("text", { ...printed, width: 420 }),
  became: word("became", BECAME, { tint: "worked", width: 110 }),
  parts: text("parts", { tint: "worked", width: 120 }),
  reason: text("reason", { tint: "worked", width: 260 }),
});
export type LinesRow = RowOf<typeof LINES_SHEET>;

/** Readings: the log of the bench; Parts shows the last of each part. */
export const READINGS_SHEET = sheet("Readings", 3, {
  when: text("when", { ...yours, width: 130 }),
  id: text("id", { ...yours, width: 70 }),
  designator: text("designator", { ...yours, width: 80 }),
  reading: text("reading", { ...yours, width: 90 }),
  size: number("size", SIZE, { tint: "worked", width: 112 }),
  inPlace: word("in place", IN_PLACE, { ...yours, width: 76 }),
  accuracy: number("meter accuracy", "0.0%", { ...yours, width: 80 }),
  verdict: text("verdict then", { tint: "worked", width: 110 }),
  remark: text("remark", { ...yours, width: 220 }),
});
export type ReadingsRow = RowOf<typeof READINGS_SHEET>;

/** What the resistors that were read are counted by. */
export const COUNTED_BY = ["value", "watts", "section"] as const;

/** Drift: how far the resistors that were read lie from their printed values, counted three ways; written by a command. */
export const DRIFT_SHEET = sheet("Drift", 3, {
  project: text("set", { tint: "worked", width: 60 }),
  by: word("counted by", COUNTED_BY, { tint: "worked", width: 90 }),
  group: text("group", { tint: "worked", width: 140 }),
  read: number("read", PIECES, { tint: "worked", width: 60 }),
  middle: number("middle drift", RATIO, { tint: "worked", width: 90 }),
  least: number("lowest drift", RATIO, { tint: "worked", width: 90 }),
  most: number("highest drift", RATIO, { tint: "worked", width: 90 }),
  beyond: number("beyond limit", PIECES, { tint: "worked", width: 90 }),
  open: number("open", PIECES, { tint: "worked", width: 60 }),
});
export type DriftRow = RowOf<typeof DRIFT_SHEET>;
