import { type Cell, PartsError, type ProblemCode } from "../core/index.js";

/** What one argument of a cell function gives to the work, cell by cell; see `ask.ts` for the readers. */
export type Ask<T> = {
  /** The argument as the host hands it over: a single value, or a range row by row. */
  readonly given: unknown;
  /** Turns one cell into what the work needs, or BLANK when there is nothing to work on. */
  readonly read: (cell: Cell) => T | typeof BLANK;
};

/** Nothing stands in a cell that is needed: the answer stays blank too. */
export const BLANK = Symbol("blank");

/** A cell function's answer: rows of cells. An error of the host's kind may stand where a value would. */
export type Answer = (Cell | CustomFunctions.Error)[][];

type Asks<T extends readonly unknown[]> = { readonly [K in keyof T]: Ask<T[K]> };

/** Problems that mean "there is no such thing" show as #N/A; all others, where the input is at fault, as #VALUE!. */
const NOT_AVAILABLE: readonly ProblemCode[] = ["nothing-fits", "none-within", "too-much", "not-a-list"];

/**
 * One answer for each cell of the arguments, with the broadcasting of the sheet's own functions: a single value serves
 * every cell, a row meets a column as a table. A needed blank gives a blank, a bad cell an error in its place only.
 *
 * @example each([size(ohms, "ohms")], (ohms) => 1 / ohms)
 */
export function each<T extends readonly unknown[]>(asks: Asks<T>, work: (...values: NoInfer<T>) => Cell): Answer {
  const ranges = asks.map((ask) => rowsOf(ask.given));
  const rows = Math.max(...ranges.map((range) => range.length));
  const columns = Math.max(...ranges.map((range) => range[0]!.length));
  const readers = asks.map((ask, i) => readerOf(ask, ranges[i]!));
  const one = (row: number, column: number) =>
    oneAnswer(() => {
      const values = readers.map((read) => read(row, column));
      return values.includes(BLANK) ? "" : work(...(values as unknown as NoInfer<T>));
    });
  return shown(
    Array.from({ length: rows }, (_, row) => Array.from({ length: columns }, (_, column) => one(row, column))),
  );
}

/**
 * A block of cells as the answer to single values, such as a list of pairs. Given columns, each row gets the first line
 * of its own block, so that the function also fills a table downwards.
 *
 * @example spill([size(ohms, "ohms")], (ohms) => [[ohms, ohms * 2]])
 */
export function spill<T extends readonly unknown[]>(asks: Asks<T>, work: (...values: NoInfer<T>) => Cell[][]): Answer {
  const ranges = asks.map((ask) => rowsOf(ask.given));
  if (ranges.some((range) => range[0]!.length > 1)) {
    return cell(() => {
      throw new PartsError("conflict", "Several columns in one argument", "Give a single value, or one column.");
    });
  }
  const readers = asks.map((ask, i) => readerOf(ask, ranges[i]!));
  const blocks = Array.from({ length: Math.max(...ranges.map((range) => range.length)) }, (_, row) =>
    blockOf(() => {
      const values = readers.map((read) => read(row, 0));
      return values.includes(BLANK) ? [[""]] : work(...(values as unknown as NoInfer<T>));
    }),
  );
  return shown(blocks.length === 1 ? blocks[0]! : evened(blocks.map((block) => block[0] ?? [""])));
}

/** One answer to all arguments taken whole, such as the share of each capacitor in a string. */
export function cell(work: () => Cell | Answer): Answer {
  return shown(
    blockOf(() => {
      const answer = work();
      return Array.isArray(answer) ? answer : [[answer]];
    }),
  );
}

/** The rows of an argument; a bare value is a range of one cell. */
export function rowsOf(given: unknown): Cell[][] {
  if (!Array.isArray(given)) return [[(given ?? null) as Cell]];
  if (given.length === 0) return [[null]];
  return given.map((row) => (Array.isArray(row) ? row : [row]));
}

/** A cell without a value as null; an error from another cell is thrown, so that it is handed on. */
export function plainCell(cell: Cell | undefined): Cell {
  if (typeof cell === "object" && cell !== null) throw cell;
  return cell ?? null;
}

/** The rows of an argument that is taken whole, none of its cells an error; see `plainCell`. */
export function plainRows(given: unknown): Cell[][] {
  return rowsOf(given).map((row) => row.map(plainCell));
}

/** What an argument gives at a place; a single value that serves a whole column is read once only. */
function readerOf<T>(
  ask: Ask<T>,
  range: readonly (readonly Cell[])[],
): (row: number, column: number) => T | typeof BLANK {
  if (range.length > 1 || range[0]!.length > 1) return (row, column) => ask.read(cellAt(range, row, column));
  let known: { readonly value: T | typeof BLANK } | null = null;
  return () => {
    known ??= { value: ask.read(cellAt(range, 0, 0)) };
    return known.value;
  };
}

function cellAt(range: readonly (readonly Cell[])[], row: number, column: number): Cell {
  const line = range[range.length === 1 ? 0 : row];
  const found = line?.[line.length === 1 ? 0 : column];
  const isOutside = !line || (line.length > 1 && column >= line.length);
  if (isOutside) throw new PartsError("nothing-fits", "this cell", "Give ranges of one length.");
  return plainCell(found);
}

function oneAnswer(work: () => Cell): Cell | CustomFunctions.Error {
  try {
    return work() ?? "";
  } catch (error) {
    return errorOf(error);
  }
}

function blockOf(work: () => Answer): Answer {
  try {
    return evened(work());
  } catch (error) {
    return [[errorOf(error)]];
  }
}

/** An error as the host shows it. An error from another cell is handed on; a mistake of ours is not hidden. */
function errorOf(error: unknown): CustomFunctions.Error {
  const { Error: CellError, ErrorCode } = CustomFunctions;
  if (error instanceof PartsError) {
    const missing = NOT_AVAILABLE.includes(error.problem.code);
    return new CellError(missing ? ErrorCode.notAvailable : ErrorCode.invalidValue, error.message);
  }
  if (error instanceof Error && !(error instanceof CellError)) throw error;
  return error as CustomFunctions.Error;
}

/** Rows of one length, filled with blanks: hosts refuse ragged blocks. */
function evened(block: Answer): Answer {
  const width = Math.max(1, ...block.map((row) => row.length));
  const rows = block.length > 0 ? block : [[""]];
  return rows.map((row) => Array.from({ length: width }, (_, i) => row[i] ?? ""));
}

/** A lone error is thrown, for that is how hosts show its message; among other answers it stands in its cell. */
function shown(answer: Answer): Answer {
  const only = answer[0]![0];
  if (answer.length === 1 && answer[0]!.length === 1 && isError(only)) throw only;
  return answer;
}

function isError(value: unknown): value is CustomFunctions.Error {
  return typeof value === "object" && value !== null;
}
