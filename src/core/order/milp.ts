/** A sum of columns times factors. */
export type Terms = readonly (readonly [column: number, factor: number])[];

/** One unknown of a model: what one of it costs, its bounds, and whether it counts whole things. */
export type Column = {
  readonly cost: number;
  readonly lower: number;
  readonly upper: number;
  readonly integer: boolean;
};

/** One condition: lower <= sum of terms <= upper. */
export type Row = { readonly terms: Terms; readonly lower: number; readonly upper: number };

/** A mixed-integer linear model as data: find the columns that keep every row and cost least. */
export type Milp = { readonly columns: readonly Column[]; readonly rows: readonly Row[] };

/** A model in the making: both lists grow, a column is known by its position. */
export type Draft = { readonly columns: Column[]; readonly rows: Row[] };

/** Adds a column of whole numbers from 0 to `upper`. @returns Its position. */
export function addCount(draft: Draft, cost: number, upper: number): number {
  return draft.columns.push({ cost, lower: 0, upper, integer: true }) - 1;
}

/** Adds a column that is 0 or 1. @returns Its position. */
export const addChoice = (draft: Draft, cost: number): number => addCount(draft, cost, 1);

/** Adds a column of any number from 0 to `upper`. @returns Its position. */
export function addAmount(draft: Draft, cost: number, upper: number): number {
  return draft.columns.push({ cost, lower: 0, upper, integer: false }) - 1;
}

/** Adds the condition that a sum is at most so much. */
export function atMost(draft: Draft, terms: Terms, upper: number): void {
  draft.rows.push({ terms, lower: Number.NEGATIVE_INFINITY, upper });
}

/** Adds the condition that a sum is at least so much. */
export function atLeast(draft: Draft, terms: Terms, lower: number): void {
  draft.rows.push({ terms, lower, upper: Number.POSITIVE_INFINITY });
}
