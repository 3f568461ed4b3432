import { PART_NUMBERS_SHEET, type PartNumberReading, type PartNumberTable, plainNumber } from "../core/index.js";
import { type Book, valuesOf } from "./book.js";
import { counted, nothingToDo, type Step } from "./step.js";
import { addRows, patchRows } from "./writeSheet.js";

/** The table of part numbers that the workbook holds, by which lists are read. */
export const partNumbersOf = (book: Book): PartNumberTable =>
  new Map(
    valuesOf(book.partNumbers).flatMap(({ number, description }) =>
      number === null || description === null ? [] : [[plainNumber(number), description] as const],
    ),
  );

/**
 * Writes part numbers and what they stand for to their sheet; a number that stands there already is told anew.
 *
 * @param source What told them: a file's name.
 */
export function bringInNumbersStep(book: Book, { rows, refused }: PartNumberReading, source: string): Step {
  const { partNumbers } = book;
  if (rows.length === 0) return nothingToDo("No part number was understood");
  const told = new Map(rows.map((row) => [plainNumber(row.number), { ...row, source }]));
  const standing = (partNumbers?.rows ?? []).flatMap(({ at, values }) => {
    const cells = told.get(plainNumber(values.number ?? ""));
    return cells ? [{ at, cells }] : [];
  });
  const known = new Set(standing.map(({ cells }) => cells));
  const fresh = [...told.values()].filter((row) => !known.has(row));
  return {
    name: `Write ${counted(told.size, "part number")}`,
    changes: [
      ...(partNumbers ? patchRows(partNumbers, standing) : []),
      ...(fresh.length > 0 ? addRows(partNumbers, PART_NUMBERS_SHEET, fresh) : []),
    ],
    overwrites: [],
    notes: refused.length > 0 ? [`${counted(refused.length, "line")} gave no number or nothing beside it.`] : [],
  };
}
