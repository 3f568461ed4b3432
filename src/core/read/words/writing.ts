import type { SourceLine } from "../sourceLine.js";
import type { Writing } from "./tokens.js";

const COMMA_DECIMAL = /(?<![\d.,])(?:\d{1,3},\d{1,2}|0,\d+)(?![\d,])/g;
const POINT_DECIMAL = /(?<![\d.,])\d*\.\d{1,2}(?![\d.])|(?<![\d.,])\d{1,3},\d{3}(?!\d)/g;

/** How a document writes: a decimal comma where those outnumber decimal points and thousands commas. */
export function writingOf(lines: readonly SourceLine[], noisy: boolean): Writing {
  const cells = lines.flatMap((line) => line.cells ?? [line.text]);
  const count = (pattern: RegExp) => cells.reduce((sum, cell) => sum + (cell.match(pattern)?.length ?? 0), 0);
  return { mark: count(COMMA_DECIMAL) > count(POINT_DECIMAL) ? "comma" : "point", noisy };
}
