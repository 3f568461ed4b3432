import type { ColumnLook } from "./host.js";

/** The three quiet tints of a head row, with text that keeps a contrast of at least 7 on each. */
export const TINTS: Readonly<Record<NonNullable<ColumnLook["tint"]>, string>> = {
  printed: "#EFE8D8",
  yours: "#DCE6F4",
  worked: "#D6EBE7",
};

/** The ink of the head row. */
export const HEAD_INK = "#1F2A2C";

/** A run of columns that folds, closed at first or open; ends included, counting from 0. */
export type ColumnGroup = { readonly start: number; readonly end: number; readonly folded: boolean };

/**
 * The runs of columns that fold together. The first column of a group stays out of the fold: it still shows when the
 * group is closed, and two groups side by side stay two (both hosts merge runs that touch).
 */
export function columnGroups(columns: readonly ColumnLook[]): ColumnGroup[] {
  const groups: { start: number; end: number; folded: boolean }[] = [];
  columns.forEach((column, i) => {
    const isInside = column.group !== null && columns[i - 1]?.group === column.group;
    if (!isInside) return;
    const last = groups.at(-1);
    if (last?.end === i - 1) last.end = i;
    else groups.push({ start: i, end: i, folded: column.folded });
  });
  return groups;
}
