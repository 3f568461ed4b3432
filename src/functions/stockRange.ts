import {
  type Cell,
  PartsError,
  SERIES,
  SERIES_NAMES,
  type Series,
  type StockPart,
  stepsBetween,
  stockOf,
} from "../core/index.js";
import { allowed, amount, count, rating, size } from "./ask.js";
import { type Ask, BLANK, rowsOf } from "./cell.js";

/** From so many decades below the power of ten that is nearest to the value wanted, to as many above, a series is taken. */
const DECADES = 3;

/**
 * The parts that a range of a sheet offers: in each row a value or the name of a series, then (as far as they stand
 * there) watts, volts, tolerance, price and pieces of one such part. Rows without a value are passed over.
 *
 * @param wanted What is to be made up, in base units: a series is taken from the decades around it.
 * @throws PartsError when a cell can't be read, or nothing stands there
 */
export function stockIn(range: unknown, wanted: number): StockPart[] {
  const parts = rowsOf(range).flatMap((row, at) => partsOfRow(row, wanted, at + 1));
  if (parts.length > 0) return parts;
  throw new PartsError("not-a-list", "the stock given", "Give a series such as E24, or values one below another.");
}

function partsOfRow(row: readonly Cell[], wanted: number, number: number): StockPart[] {
  const cell = <T>(column: number, name: string, reader: (given: unknown, name: string) => Ask<T>) => {
    const read = reader(null, `stock row ${number}, ${name}`).read(row[column] ?? null);
    return read === BLANK ? null : read;
  };
  const alike = {
    watts: cell(1, "watts", (given, name) => rating(given, name, "watt")),
    volts: cell(2, "volts", (given, name) => rating(given, name, "volt")),
    tolerance: cell(3, "tolerance", allowed),
    price: cell(4, "price", amount),
    pieces: cell(5, "pieces", count),
  };
  const series = SERIES_NAMES.find((name) => name === String(row[0]).trim().toUpperCase());
  if (series) return stockOf(valuesAround(wanted, SERIES[series]), alike);
  const value = cell(0, "value", size);
  return value === null ? [] : stockOf([value], alike);
}

/** Whole decades, so that the values wanted in a column of one size are made up from the same stock. */
function valuesAround(wanted: number, series: Series): readonly number[] {
  const middle = Math.round(Math.log10(wanted));
  return stepsBetween(Number(`1e${Math.max(-15, middle - DECADES)}`), Number(`1e${middle + DECADES}`), series);
}
