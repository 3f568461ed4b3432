import { cellText } from "../layout/row.js";
import type { ListRecord } from "./listRecord.js";

/** Records with the names put right that only the names around them tell. */
export const settleNames = (records: readonly ListRecord[]): ListRecord[] =>
  settlePieces(settleSuffixes(settleQuestionMarks(records)));

/** "R?" between R6 and R8 is R7. */
function settleQuestionMarks(records: readonly ListRecord[]): ListRecord[] {
  const number = (record: ListRecord | undefined) => Number(/(\d+)$/.exec(record?.names.at(-1) ?? "")?.[1]);
  return records.map((record, i) => {
    const [name] = record.names;
    const before = number(records[i - 1]);
    if (!name?.endsWith("?") || number(records[i + 1]) !== before + 2) return record;
    return { ...record, names: [name.replace("?", String(before + 1))] };
  });
}

/** In a poor scan "ClB" reads as C18; behind C1A it is C1B. */
function settleSuffixes(records: readonly ListRecord[]): ListRecord[] {
  return records.map((record, i) => {
    const base = /^(.*\d)A$/.exec(records[i - 1]?.names.at(-1) ?? "")?.[1];
    const isB =
      base !== undefined && record.names[0] === `${base}8` && /B$/.test(cellText(record, "designator").trim());
    return isB ? { ...record, names: [`${base}B`] } : record;
  });
}

/** "R-1-2" reads as a range; behind R-1-1 it is the second of several R-1. */
function settlePieces(records: readonly ListRecord[]): ListRecord[] {
  let before = "";
  return records.map((record) => {
    const [text, base, number] = /^([A-Z]{1,3}-\d+)-(\d+)$/.exec(cellText(record, "designator").trim()) ?? [];
    const isPiece = text !== undefined && before === `${base}-${Number(number) - 1}`;
    const names = isPiece ? [text] : record.names;
    before = names.at(-1) ?? "";
    return isPiece ? { ...record, names } : record;
  });
}
