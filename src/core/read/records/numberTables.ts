import type { RowCell } from "../layout/row.js";
import type { ListRecord } from "./listRecord.js";
import { plainNumber } from "./partNumbers.js";

/** A document's records with its own table of part numbers taken out: what each number stands for, and the table's lines. */
export type NumberTables = {
  readonly parts: readonly ListRecord[];
  readonly described: ReadonlyMap<string, readonly RowCell[]>;
  readonly lines: readonly number[];
};

const MOSTLY = 0.5;

/** A run of rows that name no parts, and most of whose numbers named parts are ordered by, explains those numbers. */
export function withoutNumberTables(records: readonly ListRecord[]): NumberTables {
  const ordered = new Set(
    records.flatMap(({ names, partNumber }) => (names.length > 0 && partNumber ? [plainNumber(partNumber)] : [])),
  );
  const tables = new Map<number, ListRecord[]>(records.map(({ table }) => [table, []]));
  for (const record of records) tables.get(record.table)!.push(record);
  const explains = (rows: readonly ListRecord[]) =>
    rows.every(({ names, partNumber }) => names.length === 0 && partNumber !== null) &&
    rows.filter(({ partNumber }) => ordered.has(plainNumber(partNumber!))).length > rows.length * MOSTLY;
  const rows = ordered.size === 0 ? [] : [...tables.values()].filter(explains).flat();
  const taken = new Set(rows);
  return {
    parts: taken.size === 0 ? records : records.filter((record) => !taken.has(record)),
    described: new Map(rows.map(({ partNumber, cells }) => [plainNumber(partNumber!), cells])),
    lines: rows.flatMap(({ lines }) => lines),
  };
}
