import type { ListedField, ListedPart } from "../../part.js";
import type { RowCell } from "../layout/row.js";
import type { ListRecord } from "../records/listRecord.js";
import { plainNumber } from "../records/partNumbers.js";
import { type Context, MEASURE_OF } from "./context.js";
import { type Stated, statedPart } from "./statedPart.js";

/** Part numbers, as `plainNumber` has them, and what each stands for in the notation of lists ("1006750-39" -> "2 k ±2 % 1/4 W"). */
export type PartNumberTable = ReadonlyMap<string, string>;

const OPEN: readonly (keyof ListedPart)[] = [
  "tolerance", "watts", "volts", "construction", "dielectric", "temperatureCoefficient", "taper",
]; // biome-ignore format: a table
const OF_VALUE = ["value", "valueState", "valueMin", "valueMax", "valueText", "sections", "inner"] as const;

/** What part numbers stand for: the cells of the document's own table, and the user's texts. */
export type Explained = {
  readonly own: ReadonlyMap<string, readonly RowCell[]>;
  readonly table: PartNumberTable | undefined;
};

/** Parts with a number that a table explains take from it what their line leaves unsaid. What is printed is never changed. */
export function withPartNumbers(
  stated: readonly Stated[],
  records: readonly ListRecord[],
  { own, table = new Map() }: Explained,
  context: Context,
): readonly Stated[] {
  if (own.size + table.size === 0) return stated;
  return stated.map((entry, at) => {
    const number = entry.part.stockNumber === null ? "" : plainNumber(entry.part.stockNumber);
    const text = table.get(number);
    const cells = own.get(number) ?? (text === undefined ? null : [{ role: "description" as const, text, unit: null }]);
    if (cells === null) return entry;
    const { part: described } = statedPart({ ...records[at]!, cells, partNumber: null }, context);
    return described.kind === entry.part.kind ? { ...entry, part: filled(entry.part, described) } : entry;
  });
}

function filled(part: ListedPart, described: ListedPart): ListedPart {
  const open = OPEN.filter((key) => part[key] === null && described[key] !== null);
  const isOpen = hasNoValue(part) && !hasNoValue(described);
  const keys = [...open, ...(isOpen ? OF_VALUE : [])];
  const at = `part number ${part.stockNumber}`;
  const from = Object.fromEntries(
    [...open, ...(isOpen ? ["value" as const] : [])].map((key) => [
      key as ListedField,
      { by: "reference" as const, at },
    ]),
  );
  return { ...part, ...Object.fromEntries(keys.map((key) => [key, described[key]])), from: { ...part.from, ...from } };
}

const hasNoValue = ({ valueState, sections, inner }: ListedPart) =>
  valueState === "missing" && sections === null && inner === null;

const MOSTLY = 0.5;

/**
 * The part numbers of parts whose value neither the list nor the user's table tells, each once; none where the list prints
 * most values and there is no table to look in: then the numbers only serve to order by.
 */
export function numbersWithoutValue(
  parts: readonly ListedPart[],
  table: PartNumberTable | undefined,
): readonly string[] {
  const numbered = parts.filter((part) => MEASURE_OF[part.kind] !== undefined && part.stockNumber !== null);
  const open = numbered.filter(hasNoValue);
  const isOrderedBy = (table?.size ?? 0) === 0 && open.length < numbered.length * MOSTLY;
  return isOrderedBy ? [] : [...new Set(open.map(({ stockNumber }) => stockNumber!))];
}
