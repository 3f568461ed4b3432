import type { Cell } from "../core/index.js";

/** A cell as the host holds it: what it shows as a value, and its formula where it has one (with its leading "="). */
export type HostCell = { readonly value: Cell; readonly formula: string | null };

/** One sheet's cells from A1 to the last used row and column, row by row, all rows equally long. */
export type SheetCells = { readonly sheet: string; readonly rows: readonly (readonly HostCell[])[] };

/**
 * What to put into a cell: text always lands as text (a text "=cmd" is never run), `{ formula }` is a live formula,
 * "" empties the cell, null leaves it as it is.
 */
export type Written = string | number | boolean | null | { readonly formula: string };

/**
 * How a column of a structured sheet looks. Width in pixels.
 *
 * `format` is a number format of its cells below the head ("0.00"), or "@" for a column of text that people type into
 * (`1/2` stays text); a formula in such a column is still a formula. Neighbours of the same `group` fold together; the
 * first of them stays visible when the group is closed. A group whose columns are `folded` stands closed when its sheet
 * is first dressed; after that it is the user's.
 */
export type ColumnLook = {
  readonly width: number;
  readonly format: string | null;
  readonly tint: "printed" | "yours" | "worked" | null;
  readonly group: string | null;
  readonly folded: boolean;
};

/**
 * One change to a workbook; rows and columns count from 0. A sheet that a change names and that is not there is made.
 *
 * A "look" dresses a structured sheet: head row bold, tinted and frozen with the first columns, filter buttons on the
 * heads as far down as cells are filled. Changes of one write may stand in any order.
 */
export type Change =
  | { readonly kind: "sheet"; readonly sheet: string }
  | {
      readonly kind: "cells";
      readonly sheet: string;
      readonly row: number;
      readonly column: number;
      readonly cells: readonly (readonly Written[])[];
    }
  | {
      readonly kind: "look";
      readonly sheet: string;
      readonly columns: readonly ColumnLook[];
      readonly frozenColumns: number;
      readonly filter: boolean;
    };

/** A place in the workbook; rows and columns count from 0. */
export type Place = { readonly sheet: string; readonly row: number; readonly column: number };

/** Rows of one sheet that the user marked, hidden ones left out: spans that count from 0, both ends included. */
export type Marked = {
  readonly sheet: string;
  readonly spans: readonly { readonly first: number; readonly last: number }[];
};

/** The one narrow door to a spreadsheet. Excel and the embedded sheet both stand behind it and pass one contract. */
export interface Host {
  /** Names of the sheets, in order. */
  sheets(): Promise<readonly string[]>;
  /** A sheet's cells, or null where there is no such sheet. */
  read(sheet: string): Promise<SheetCells | null>;
  /** Does all changes as one step that one undo takes back. `name` is what the step is called. */
  write(changes: readonly Change[], name: string): Promise<void>;
  /** Where the user stands. */
  selection(): Promise<Place>;
  /** The rows that the user's selection touches. */
  marked(): Promise<Marked>;
  /** Moves the user there. */
  select(place: Place): Promise<void>;
  /** Calls back when the selection moves (never while the user types); the answer stops it. */
  onSelect(listener: (place: Place) => void): () => void;
  /** Calls back when cells of a sheet change, by whomever; the answer stops it. */
  onChange(listener: (sheet: string) => void): () => void;
}
