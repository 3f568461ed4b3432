import { answer as answerOf } from "../core/index.js";
import { cell, plainRows } from "./cell.js";

/**
 * What a worked-out column of Parts says for one row (words, ohms, farads, watts or volts as its head has it), from all that stands to its left.
 * Whatever was typed over to the left counts as it stands.
 * @customfunction ANSWER
 * @helpurl reference.html#ANSWER
 * @param head The head of the column: verdict, action, because, new value, new watts ...
 * @param heads All heads to the left of it.
 * @param row The cells of the row to the left of it.
 * @returns One value: words, or a number in ohms, farads, watts or volts as the head says.
 * @example LUG.ANSWER("action", {"kind","value","type"}, {"capacitor","0.05 µF","paper_wax"}) -> "replace"
 */
export function answer(head: unknown, heads: unknown[][], row: unknown[][]): unknown[][] {
  return cell(() => answerOf(String(plainRows(head)[0]![0] ?? ""), plainRows(heads)[0]!, plainRows(row)[0]!));
}
