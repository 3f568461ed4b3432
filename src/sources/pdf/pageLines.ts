/** A piece of text on a page: its left end and baseline, width and height in points, y growing upwards. */
export type PageText = {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
};

/** A line of a page as typed on a grid of characters, and where it stands. */
export type PageLine = {
  readonly text: string;
  readonly y: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
};

const SAME_LINE = 0.45;
const LEAST_GAP = 0.25;

/**
 * The lines of a page with their columns rebuilt: each piece of text stands at the character its place on the page
 * falls on, so that columns line up as on a typewriter.
 *
 * @param pieces In any order; blank ones say nothing.
 */
export function pageLines(pieces: readonly PageText[]): PageLine[] {
  const inked = pieces.filter((piece) => piece.text.trim() !== "");
  if (inked.length === 0) return [];
  const left = Math.min(...inked.map((piece) => piece.x));
  const pitch = characterWidth(inked);
  return rows(inked).map((row) => ({
    text: typed(row, left, pitch),
    y: row[0]!.y,
    height: Math.max(...row.map((piece) => piece.height)),
    left: row[0]!.x,
    right: row.at(-1)!.x + row.at(-1)!.width,
  }));
}

/** The usual width of a character, in points: the median over all pieces. */
function characterWidth(pieces: readonly PageText[]): number {
  const widths = pieces.map((piece) => piece.width / piece.text.length).filter((width) => width > 0);
  return widths.sort((a, b) => a - b)[Math.floor(widths.length / 2)] ?? 5;
}

/** Pieces on one baseline, from the top of the page down, each row from left to right. */
function rows(pieces: readonly PageText[]): PageText[][] {
  const sorted = [...pieces].sort((a, b) => b.y - a.y || a.x - b.x);
  const found: PageText[][] = [];
  for (const piece of sorted) {
    const row = found.at(-1);
    const isSame = row && Math.abs(row[0]!.y - piece.y) < SAME_LINE * Math.max(row[0]!.height, piece.height, 1);
    if (isSame) row.push(piece);
    else found.push([piece]);
  }
  for (const row of found) row.sort((a, b) => a.x - b.x);
  return found;
}

/** A row as text: pieces that touch are joined, a gap is at least one blank, a column starts where it stands. */
function typed(row: readonly PageText[], left: number, pitch: number): string {
  let text = "";
  let end = Number.NEGATIVE_INFINITY;
  for (const piece of row) {
    const gap = piece.x - end;
    const column = Math.round((piece.x - left) / pitch);
    if (gap < LEAST_GAP * pitch) text += piece.text;
    else if (gap < 2 * pitch) text += ` ${piece.text}`;
    else text = text.padEnd(Math.max(column, text === "" ? 0 : text.length + 2)) + piece.text;
    end = piece.x + piece.width;
  }
  return text.trimEnd();
}
