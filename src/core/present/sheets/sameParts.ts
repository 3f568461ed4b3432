/** TABLE: Same parts: which part of one list is which of another list of its set, and what you said of it. */
import { number, text, word } from "../column.js";
import { type RowOf, sheet } from "../sheet.js";

const worked = { tint: "worked" } as const;
const printed = { tint: "printed" } as const;

/** What a person can say of a pair. */
export const PAIR_ANSWERS = ["same part", "another part"] as const;
export type PairAnswer = (typeof PAIR_ANSWERS)[number];

/** How sure a pair is, in words; "said by you" once a person confirmed it. */
export const PAIR_SURE = ["sure", "likely", "a guess", "said by you"] as const;

/** Same parts: a row for each pair that is proposed or was said, and for each part that stands in one list alone. */
export const SAME_PARTS_SHEET = sheet("Same parts", 2, {
  designator: text("designator", { ...printed, width: 90 }),
  otherDesignator: text("other designator", { ...printed, width: 110 }),
  howSure: word("how sure", PAIR_SURE, { ...worked, width: 90 }),
  sureness: number("sureness", "0%", { ...worked, width: 70 }),
  said: word("said", PAIR_ANSWERS, { tint: "yours", width: 100 }),
  differs: text("the lists differ in", { ...worked, width: 300 }),
  because: text("speaks for it", { ...worked, width: 300 }),
  printed: text("printed", { ...printed, width: 200 }),
  otherPrinted: text("other printed", { ...printed, width: 200 }),
  document: text("document", { ...printed, width: 110 }),
  otherDocument: text("other document", { ...printed, width: 120 }),
  project: text("set", { ...printed, width: 56 }),
  part: text("part", { ...printed, width: 70 }),
  otherPart: text("other part", { ...printed, width: 80 }),
});
export type SamePartsRow = RowOf<typeof SAME_PARTS_SHEET>;
