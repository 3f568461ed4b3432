import { startsPart } from "./pairs.js";
import type { Strip } from "./pieces.js";
import type { Piece } from "./row.js";

/** In so many lines a later part begins at a column before that column parts lines by itself. */
const FEWEST = 2;

/**
 * The strips of a page with the parts set apart that an entry beside them has run into: where parts begin in other lines,
 * one blank before a name is a gap.
 *
 * @example withNarrowGaps(strips) // "R3 250K vol. control C3 8 mfd" under "R2 1 meg          C2 .1 mfd" as two pieces
 */
export function withNarrowGaps(strips: readonly Strip[]): readonly Strip[] {
  const counts = new Map<number, number>();
  for (const { form, pieces } of strips)
    if (form === "gaps")
      pieces.forEach((piece, i) => {
        if (i > 0 && startsPart(piece, pieces[i + 1])) counts.set(piece.start, (counts.get(piece.start) ?? 0) + 1);
      });
  const columns = [...counts].flatMap(([start, count]) => (count >= FEWEST ? [start] : []));
  if (columns.length === 0) return strips;
  return strips.map((strip) => (strip.form === "gaps" ? parted(strip, columns) : strip));
}

function parted(strip: Strip, columns: readonly number[]): Strip {
  const pieces = strip.pieces.flatMap((piece, i) => {
    const column = columns.find((start) => runsInto(piece, start, strip.pieces[i + 1]));
    return column === undefined ? [piece] : splitAt(piece, column);
  });
  return pieces.length === strip.pieces.length ? strip : { ...strip, pieces };
}

function runsInto({ text, start }: Piece, column: number, next: Piece | undefined): boolean {
  const at = column - start;
  return at > 0 && text[at - 1] === " " && startsPart({ text: text.slice(at), start: column }, next);
}

const splitAt = ({ text, start }: Piece, column: number): Piece[] => [
  { text: text.slice(0, column - start).trimEnd(), start },
  { text: text.slice(column - start), start: column },
];
