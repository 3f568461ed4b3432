/** What a cell holds: null is an empty cell, never a zero. */
export type Cell = string | number | boolean | null;

/** A sheet's table: a name, heads that each stand once, and rows as long as the heads. */
export type Table = {
  readonly name: string;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
};
