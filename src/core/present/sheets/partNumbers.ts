/** TABLE: Part numbers: what each part number of your lists stands for. */
import { text } from "../column.js";
import { type RowOf, sheet } from "../sheet.js";

const yours = { tint: "yours" } as const;

/** Part numbers: a row a number; lists that give numbers in place of values are read by it. */
export const PART_NUMBERS_SHEET = sheet("Part numbers", 1, {
  number: text("part number", { ...yours, width: 140 }),
  description: text("stands for", { ...yours, width: 320 }),
  source: text("as told by", { ...yours, width: 180 }),
});
export type PartNumbersRow = RowOf<typeof PART_NUMBERS_SHEET>;
