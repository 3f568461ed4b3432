import type { Cell } from "../core/index.js";
import { type EvaluatedError, EvaluationError, helpers, registries } from "./library.js";

/** One parameter of a cell function, as `functions.json` describes it. */
export type ListedParameter = {
  readonly name: string;
  readonly description?: string;
  readonly dimensionality?: "matrix";
  readonly optional?: boolean;
  readonly repeating?: boolean;
};

/** One cell function, as `functions.json` describes it. */
export type ListedFunction = {
  readonly id: string;
  readonly description?: string;
  readonly helpUrl?: string;
  readonly parameters: readonly ListedParameter[];
};

/** What the metadata tool writes from the functions' comments. */
export type FunctionListing = { readonly functions: readonly ListedFunction[] };

type CellFunction = (...args: unknown[]) => unknown;
type Given = { readonly value: Cell; readonly message?: string };
type Shown = { readonly value: Cell } | EvaluatedError;

/** The error that cell functions raise, by the same name and with the same fields as in Excel. */
class CellError extends Error {
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message);
  }
}

const associated = new Map<string, CellFunction>();

/**
 * Gives the function files what they expect of Excel: a global `CustomFunctions` with its errors and its register.
 * To be called before those files are loaded; what they register is then found by `registerCellFunctions`.
 */
export function standInForExcel(): void {
  const ErrorCode = { invalidValue: "#VALUE!", notAvailable: "#N/A" };
  const associate = (id: string, work: CellFunction) => void associated.set(id, work);
  Object.assign(globalThis, { CustomFunctions: { Error: CellError, ErrorCode, associate } });
}

/**
 * Makes the functions of a listing known to the embedded spreadsheet as `LUG.NAME`.
 *
 * @param namespace "LUG"
 * @returns The ids that are listed but were never associated with a function; none, unless the build is broken.
 */
export function registerCellFunctions(listing: FunctionListing, namespace: string): string[] {
  const missing: string[] = [];
  for (const listed of listing.functions) {
    const work = associated.get(listed.id);
    if (work) registries.functionRegistry.replace(`${namespace}.${listed.id}`, describe(listed, work, namespace));
    else missing.push(listed.id);
  }
  return missing;
}

function describe(listed: ListedFunction, work: CellFunction, category: string): object {
  return {
    description: listed.description ?? "",
    category,
    isExported: true,
    args: listed.parameters.map(argumentOf),
    compute: (...given: unknown[]) => answerOf(() => work(...withoutErrors(argumentsFor(listed.parameters, given)))),
  };
}

/** `any, range<any>` makes the library hand a range over whole; without it, it would call once for each cell. */
function argumentOf(parameter: ListedParameter): object {
  const words = [parameter.dimensionality === "matrix" ? "any, range<any>" : "any"];
  if (parameter.optional) words.push("optional");
  if (parameter.repeating) words.push("repeating");
  return helpers.arg(`${parameter.name} (${words.join(", ")})`, parameter.description ?? "");
}

/** As Excel calls: ranges row by row, null for what is left out, the repeated ones together in one list at the end. */
function argumentsFor(parameters: readonly ListedParameter[], given: readonly unknown[]): unknown[] {
  return parameters.map((parameter, i) =>
    parameter.repeating ? given.slice(i).map((one) => argument(parameter, one)) : argument(parameter, given[i]),
  );
}

/** An error in a single argument is the answer; one inside a range is the function's to place. */
function withoutErrors(given: unknown[]): unknown[] {
  for (const one of given) if (one instanceof CellError) throw one;
  return given;
}

function argument(parameter: ListedParameter, given: unknown): unknown {
  if (given === undefined) return null;
  if (Array.isArray(given)) return transposed(given as Given[][]).map((row) => row.map(cellOf));
  const single = cellOf(given as Given);
  return parameter.dimensionality === "matrix" ? [[single]] : single;
}

function cellOf(given: Given | undefined): Cell | CellError {
  const value = given?.value ?? null;
  if (typeof value === "string" && registries.errorTypes.has(value)) return new CellError(value, given?.message);
  return value;
}

function answerOf(work: () => unknown): Shown | Shown[][] {
  try {
    const answer = work();
    if (!Array.isArray(answer)) return shown(answer);
    const rows = answer as unknown[][];
    const isOne = rows.length === 1 && rows[0]!.length === 1;
    return isOne ? shown(rows[0]![0]) : transposed(rows.map((row) => row.map(shown)));
  } catch (error) {
    if (error instanceof CellError) return shown(error);
    throw error;
  }
}

/** A missing answer is an empty text, never a 0. */
function shown(answer: unknown): Shown {
  if (answer instanceof CellError) return new EvaluationError(answer.message, answer.code);
  return { value: (answer ?? "") as Cell };
}

/** The library keeps ranges column by column, the functions take and give them row by row. */
function transposed<T>(block: readonly (readonly T[])[]): T[][] {
  return Array.from({ length: block[0]?.length ?? 0 }, (_, i) => block.map((line) => line[i]!));
}
