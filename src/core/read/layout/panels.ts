import { designatorsOf } from "../records/designators.js";
import { printedHeadsAt } from "./headBlock.js";
import { isKindHeading, isPageLine, sectionName } from "./headings.js";
import { pairsIn } from "./pairs.js";
import { type Strip, stripOfPieces } from "./pieces.js";
import type { Piece } from "./row.js";

const SLACK = 2;
/** A head may be centred over its column by so much. */
const HANGING = 4;

/**
 * The strips of a document with side-by-side panels put one below the other: the left panel of a page is read to its
 * end before the right one. Strips of other documents come back as they are.
 */
export function unfoldPanels(strips: readonly Strip[]): Strip[] {
  const unfolded: Strip[] = [];
  const pairsAt = pairsIn(strips);
  let at = 0;
  let headed = Number.NEGATIVE_INFINITY;
  while (at < strips.length) {
    const { starts, height, headsEnd } = panelsAt(strips, at);
    if (starts.length > 1) {
      const end = blockEnd(strips, at + height);
      unfolded.push(...panelsOf(strips.slice(at, end), starts));
      at = end;
    } else if (headsEnd !== undefined) {
      unfolded.push(...strips.slice(at, at + height));
      headed = headsEnd;
      at += height;
    } else {
      const pairs = pairsAt(at, headed);
      unfolded.push(...(pairs.starts ? panelsOf(strips.slice(at, at + pairs.height), pairs.starts) : pairs.strips));
      at += pairs.height;
    }
  }
  return unfolded;
}

/** Where panels start, how many lines their heads take, and where the last head ends, if there are heads. */
type Panels = { readonly starts: readonly number[]; readonly height: number; readonly headsEnd?: number };

/** Where the panels start: at each of several headings of kinds, each head of designators, or each return of the first head. */
function panelsAt(strips: readonly Strip[], at: number): Panels {
  const { form, pieces } = strips[at]!;
  const block = printedHeadsAt(strips, at);
  const mayHead = form === "gaps" && pieces.length > 1;
  if (mayHead && (areOfKinds(pieces) || (!block && areOfSections(pieces, bodyAt(strips, at + 1)))))
    return { starts: pieces.map((piece) => piece.start), height: 1 };
  if (!block) return { starts: [], height: 1 };
  const isTable = form !== "gaps";
  const [first, ...more] = block.heads.filter((head) => head.role === "designator");
  const named = first ? [first, ...more.filter((head) => !isTable || head.text === first.text)] : [];
  const again = block.heads.filter((head, i) => i !== 1 && head.text === block.heads[0]!.text);
  const starts = (named.length > 1 ? named : again).map((head) => head.start);
  const isNamed = isTable || starts.every((start) => isNamedBelow(bodyAt(strips, at + block.height), start));
  return { starts: isNamed ? starts : [], height: block.height, headsEnd: block.heads.at(-1)!.end };
}

const areOfKinds = (pieces: readonly Piece[]) => pieces.every((piece) => isKindHeading(piece.text));

/** Headings of sections side by side, each above designators. */
const areOfSections = (pieces: readonly Piece[], body: readonly Strip[]) =>
  pieces.every((piece) => sectionName(piece.text) !== null && !isKindHeading(piece.text)) &&
  pieces.every((piece) => isNamedBelow(body, piece.start));

const BODY = 40;

/** The lines below a head that tell what its columns hold. */
const bodyAt = (strips: readonly Strip[], from: number) => strips.slice(from, from + BODY);

/** Whether designators stand in a typed column: a head that could say so ("Component") may mean the kind of part. */
const isNamedBelow = (body: readonly Strip[], start: number) =>
  body.some(({ pieces }) =>
    pieces.some((piece) => Math.abs(piece.start - start) <= HANGING && designatorsOf(piece.text.split(/[\s(]/)[0]!)),
  );

/** A block of panels goes to the next page line, two blank lines, or the next head. */
function blockEnd(strips: readonly Strip[], from: number): number {
  for (let end = from; end < strips.length; end++) {
    const strip = strips[end]!;
    const isBlank = (i: number) => (strips[i]?.text.trim() ?? "") === "";
    const isFoot = strip.pieces.length > 0 && isPageLine(strip.text) && !/continued on/i.test(strip.text);
    if (isFoot || (isBlank(end) && isBlank(end + 1))) return end;
    if (panelsAt(strips, end).starts.length > 1) return headingAbove(strips, from, end);
  }
  return strips.length;
}

/** Where the headings begin that stand right above a block: "(B) AUDIO CHASSIS" is no piece of the panel before. */
function headingAbove(strips: readonly Strip[], from: number, block: number): number {
  let at = block;
  while (at > from && isLoneHeading(strips[at - 1]!)) at--;
  return at;
}

const isLoneHeading = ({ text, pieces }: Strip) =>
  text.trim() === "" || (pieces.length === 1 && sectionName(pieces[0]!.text) !== null);

/** The panels of a block one below the other. */
const panelsOf = (block: readonly Strip[], starts: readonly number[]): Strip[] =>
  starts.flatMap((start, panel) => {
    const stop = starts[panel + 1] ?? Number.POSITIVE_INFINITY;
    return block.map((strip) => panelOf(strip, start, stop)).filter((strip) => strip.pieces.length > 0);
  });

function panelOf(strip: Strip, start: number, stop: number): Strip {
  const slack = strip.form === "gaps" ? SLACK : 0;
  const pieces = strip.pieces.filter((piece) => piece.start >= start - slack && piece.start < stop - slack);
  return stripOfPieces(strip, pieces);
}
