import { columnNamesOf, designatorsOf, isKeyNumber } from "../records/designators.js";
import type { Strip } from "./pieces.js";
import type { Head, Piece, Role, RowCell } from "./row.js";

const SLACK = 2;
const COMMON = 0.15;

/**
 * Where the columns under typed heads truly start: a head may be centred over its column, so each goes to the place in
 * its reach at which most lines of the body have a piece, or stays where it begins if enough of them do.
 */
export function settleColumns(heads: readonly Head[], body: readonly Strip[]): Head[] {
  const counts = new Map<number, number>();
  for (const strip of body)
    for (const piece of strip.pieces) counts.set(piece.start, (counts.get(piece.start) ?? 0) + 1);
  const settled: Head[] = [];
  heads.forEach((head, i) => {
    const least = i === 0 ? 0 : settled[i - 1]!.start + SLACK + 1;
    const reach = [...counts].filter(([start]) => start >= least && start <= head.end);
    const common = reach.filter(([, count]) => count >= Math.max(2, body.length * COMMON));
    const flush = common.find(([start]) => start === head.start);
    const nearest = common.sort((a, b) => b[1] - a[1] || Math.abs(a[0] - head.start) - Math.abs(b[0] - head.start));
    const best = flush ?? nearest[0];
    settled.push(best ? { ...head, start: best[0] } : head);
  });
  return settled;
}

const MOSTLY = 0.5;

/** The texts that a body has first in each line under one head. */
export const firstsUnder = (heads: readonly Head[], head: Head, body: readonly Strip[]) =>
  body.flatMap((strip) => {
    const own = strip.pieces.find((piece) => piece.text.trim() !== "" && headOver(heads, strip, piece) === head);
    return own ? [own.text.trim()] : [];
  });

const KEY_NUMBER = /^(?:no|nr|number)\.?$/i;

/** The heads with "No." naming the parts where no other head does and values, not counts, stand beside it. */
export function withKeyNumbers(heads: readonly Head[]): readonly Head[] {
  const has = (role: Role) => heads.some((head) => head.role === role);
  if (has("designator") || has("quantity") || !has("value")) return heads;
  return heads.map((head) => (KEY_NUMBER.test(head.text.trim()) ? { ...head, role: "designator" } : head));
}

/** Whether bare numbers stand under a head that says "symbol" or "diagram no.", and no other column but that of part numbers names parts. */
export function isNumbered(heads: readonly Head[], body: readonly Strip[]): boolean {
  const own = heads.find((head) => head.role === "designator");
  const firsts = own ? firstsUnder(heads, own, body) : [];
  const isMost = firsts.filter(isKeyNumber).length > firsts.length * MOSTLY;
  const others = heads.filter((head) => head !== own && head.role !== "partNumber" && head.role !== "section");
  const lastWords = (head: Head) => firstsUnder(heads, head, body).map((text) => text.split(/\s+/).at(-1)!);
  return isMost && others.every((head) => shareOfNames(lastWords(head)) < MOSTLY);
}

const shareOfNames = (texts: readonly string[], isName: (text: string) => unknown = designatorsOf) =>
  texts.filter(isName).length / Math.max(1, texts.length);

const isColumnName = (text: string) => designatorsOf(text) ?? columnNamesOf(text);

/** A column holds names where this share of its texts are: others stand for things without a number, such as a speaker. */
const SOME = 0.25;

/** The heads with the column that truly holds the designators named so, whatever its head calls it ("Item", "Used as"). */
export function nameDesignators(heads: readonly Head[], body: readonly Strip[]): Head[] {
  const all = heads.map((head) =>
    shareOfNames(firstsUnder(heads, head, body), head.role === "designator" ? isColumnName : designatorsOf),
  );
  const others = all.map((share, i) => (heads[i]!.role === "section" || heads[i]!.role === "partNumber" ? 0 : share));
  const shares = Math.max(...others) < SOME ? all : others;
  const named = heads.findIndex((head) => head.role === "designator");
  const best = shares.indexOf(Math.max(...shares));
  if (shares[best]! < MOSTLY || (named >= 0 && shares[named]! >= shares[best]! / 2)) return onlyNamed(heads, named);
  return heads.map((head, i) => {
    if (i === best) return { ...head, role: "designator" };
    return head.role === "designator" ? { ...head, role: "item" } : head;
  });
}

const NAMES_A_THING = /^(?:component|part)\b/i;

/** Only one column names the parts; another whose head could say so describes them ("Component") or tells where they serve ("Circuit"). */
const onlyNamed = (heads: readonly Head[], named: number): Head[] =>
  heads.map((head, i) => {
    if (head.role !== "designator" || i === named) return head;
    return { ...head, role: NAMES_A_THING.test(head.text) ? "description" : "use" };
  });

/** The cells of a strip under heads: by index in tables, else by the last column that starts at or before the piece. */
export function cellsUnder(heads: readonly Head[], strip: Strip): RowCell[] {
  if (strip.form !== "gaps") return byIndex(heads, strip.pieces);
  const price = heads.find((head) => head.role === "price");
  const isPrice = (piece: Piece) => piece === strip.pieces.at(-1) && PRICE.test(piece.text);
  const placed = strip.pieces.map((piece) => ({
    piece,
    head: price && isPrice(piece) ? price : headFor(heads, piece),
  }));
  const shifted = shiftLongDesignators(heads, placed);
  return heads.flatMap((head) =>
    cellsOfColumn(
      head,
      shifted.filter((own) => own.head === head).map((own) => own.piece.text),
    ),
  );
}

/** The pieces of one column are one cell; what stands behind the designators of their column describes the part. */
function cellsOfColumn(head: Head, [first, ...more]: readonly string[]): RowCell[] {
  if (first === undefined) return [];
  const { role, unit } = head;
  const isRunOn = role === "designator" && more.length > 0 && designatorsOf(first) !== null && !/[,&]$/.test(first);
  if (!isRunOn) return [{ role, text: [first, ...more].join(" "), unit }];
  return [
    { role, text: first, unit },
    { role: "description", text: more.join(" "), unit: null },
  ];
}

const PRICE = /^[$£]?\s?[\dOolIS]*[.,][\dOolIS]{2}$/;

function byIndex(heads: readonly Head[], pieces: readonly Piece[]): RowCell[] {
  return pieces.flatMap((piece) => {
    const head = heads.find((candidate) => candidate.start === piece.start);
    const text = piece.text.trim();
    const isEmpty = text === "" || (head?.role === "designator" && /^[-–—]+$/.test(text));
    return isEmpty ? [] : [{ role: head?.role ?? "remarks", text, unit: head?.unit ?? null }];
  });
}

/** The head that a piece of a strip stands under. */
export const headOver = (heads: readonly Head[], strip: Strip, piece: Piece) =>
  strip.form === "gaps" ? headFor(heads, piece) : heads.find((head) => head.start === piece.start);

/** The head of the column that a piece of a typed line stands in; a figure set to the right may begin before its head. */
export function headFor(heads: readonly Head[], piece: Piece): Head {
  const at = Math.max(0, heads.filter((head) => head.start <= piece.start + SLACK).length - 1);
  const next = heads[at + 1];
  const isRight = next !== undefined && piece.start > heads[at]!.start + SLACK && FIGURE.test(piece.text);
  return isRight && piece.start + piece.text.length > next.start ? next : heads[at]!;
}

const FIGURE = /^[\d.,/½¼]+$/;

type Placed = { readonly piece: Piece; readonly head: Head };

/** "R3,     R4   1833  Resistor": a designator list that runs into the next column pushes the rest on by one. */
function shiftLongDesignators(heads: readonly Head[], placed: readonly Placed[]): readonly Placed[] {
  const [first, second] = placed;
  const isOpen = first?.head.role === "designator" && /,$/.test(first.piece.text);
  if (!isOpen || second?.head.role === "designator" || !second || !designatorsOf(second.piece.text)) return placed;
  const next = heads.indexOf(second.head);
  return placed.map(({ piece, head }, i) => {
    if (i === 0) return { piece, head };
    if (i === 1) return { piece, head: first.head };
    return { piece, head: heads[Math.min(next + i - 2, heads.indexOf(head))]! };
  });
}
