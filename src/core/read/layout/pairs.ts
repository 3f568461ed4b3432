import { designatorsAt, designatorsOf } from "../records/designators.js";
import { type Strip, stripOfPieces } from "./pieces.js";
import type { Piece } from "./row.js";

const SLACK = 2;

/** The parts of a line that holds several, one by one; or, where their entries go on below, the panels they open. */
export type Pairs = {
  readonly strips: readonly Strip[];
  readonly starts: readonly number[] | null;
  readonly height: number;
};

/**
 * Finds the parts that stand side by side in a line without any head over the later ones. Entries that go on in the lines
 * below make panels of all lines down to the next blank one.
 *
 * What it finds `at` a line depends on `headed`, where the columns under the last head end: a part begins only behind them.
 */
export function pairsIn(strips: readonly Strip[]): (at: number, headed: number) => Pairs {
  /** Down to where nothing goes on beside parts that begin so: a long list is looked through once, not from each line. */
  const looked = new Map<string, number>();
  return (at, headed) => {
    const own = pairsInLine(strips[at]!, headed);
    const single = { strips: own, starts: null, height: 1 };
    if (own.length < 2) return single;
    const starts = own.map((strip) => strip.pieces[0]!.start);
    const key = `${headed}: ${starts}`;
    if (at < (looked.get(key) ?? 0)) return single;
    const end = endOfPanels(strips, at + 1, starts, headed);
    if (strips.slice(at + 1, end).some((strip) => goesOnIn(strip, starts, headed)))
      return { strips: own, starts, height: end - at };
    looked.set(key, end);
    return single;
  };
}

function endOfPanels(strips: readonly Strip[], from: number, starts: readonly number[], headed: number): number {
  let end = from;
  while (end < strips.length && isOfPanels(strips[end]!, starts, headed)) end++;
  return end;
}

const isNear = (starts: readonly number[], piece: Piece) => starts.some((at) => Math.abs(at - piece.start) <= SLACK);

/** Whether a line goes on with panels: parts that begin where they begin, or the rest of entries. */
const isOfPanels = (strip: Strip, starts: readonly number[], headed: number) =>
  strip.form === "gaps" &&
  strip.pieces.length > 0 &&
  (startsPart(strip.pieces[0], strip.pieces[1])
    ? pairsInLine(strip, headed).every((part) => isNear(starts, part.pieces[0]!))
    : goesOnIn(strip, starts, headed));

/** The rest of entries: nothing stands where the panels begin, or a part begins in a later one only. */
const goesOnIn = ({ pieces }: Strip, starts: readonly number[], headed: number) =>
  pieces.length > 0 &&
  pieces[0]!.start > starts[0]! + SLACK &&
  pieces.every((piece, i) => !isNear(starts, piece) || (piece.start > headed && startsPart(piece, pieces[i + 1])));

/** A line that holds several parts without any head over the later ones: "R1 47K    R11 2K2", "C3 ... 300V   R3 ...". */
function pairsInLine(strip: Strip, headed: number): Strip[] {
  const pieces = strip.pieces.filter((piece) => piece.text.trim() !== "");
  if (strip.form === "strokes" || !startsPart(pieces[0], pieces[1])) return [strip];
  const isLater = (piece: Piece, i: number) => i > 0 && piece.start > headed && startsPart(piece, pieces[i + 1]);
  const starts = pieces.flatMap((piece, i) => (i === 0 || isLater(piece, i) ? [i] : []));
  if (starts.length < 2) return [strip];
  return starts.map((from, i) => stripOfPieces(strip, pieces.slice(from, starts[i + 1])));
}

/** A piece that is a designator with something behind it, or "R11 2K2" in one. */
export function startsPart(piece: Piece | undefined, next: Piece | undefined): boolean {
  if (!piece) return false;
  const alone = designatorsOf(piece.text);
  if (alone) return next !== undefined && !designatorsOf(next.text) && !piece.text.endsWith(",");
  const found = designatorsAt(piece.text);
  return found !== null && /^(?:\s+[\d.½¼]|\s*=\s*\S|\s+[-–]\s+\S)/.test(piece.text.slice(found.end));
}
