import type { Zone } from "./library.js";

/** A column's letters, counting from 0. @example lettersOf(27) // "AB" */
export function lettersOf(column: number): string {
  const rest = column % 26;
  const letter = String.fromCharCode(65 + rest);
  return column < 26 ? letter : lettersOf((column - rest) / 26 - 1) + letter;
}

/** A cell's place, counting from 0. @example placeOf("AB2") // { col: 27, row: 1 } */
export function placeOf(address: string): { readonly col: number; readonly row: number } {
  const [, letters = "A", row = "1"] = /^\$?([A-Z]+)\$?(\d+)$/.exec(address) ?? [];
  const column = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
  return { col: column - 1, row: Number(row) - 1 };
}

/** A block's address. @example rangeOf({ left: 0, right: 2, top: 0, bottom: 9 }) // "A1:C10" */
export function rangeOf({ left, right, top, bottom }: Zone): string {
  return `${lettersOf(left)}${top + 1}:${lettersOf(right)}${bottom + 1}`;
}

/** The block at an address of two corners, or of one cell. */
export function zoneOf(range: string): Zone {
  const [first = "A1", last = first] = range.split(":");
  const [from, to] = [placeOf(first), placeOf(last)];
  return { left: from.col, right: to.col, top: from.row, bottom: to.row };
}
