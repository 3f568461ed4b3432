import { designatorsAt, designatorsOf } from "../records/designators.js";
import { isKindHeading, sectionName } from "./headings.js";
import { headsOf } from "./heads.js";
import { type Strip, stripOfPieces } from "./pieces.js";

const SLACK = 1;
const FEWEST = 3;

/**
 * The strips of a typed list with what stands in front of the designators put where it is read: the name of a group,
 * written once beside its first part, as a heading of its own; what stands before every part, behind its designators.
 */
export function withBesides(strips: readonly Strip[]): readonly Strip[] {
  const beside = strips.filter(isBeside);
  if (beside.length === 0) return strips;
  const starts = beside.map(({ pieces }) => pieces[1]!.start);
  const below = strips.filter(
    (strip) => startsWithName(strip) && starts.some((at) => isNear(strip.pieces[0]!.start, at)),
  );
  if (beside.length + below.length < FEWEST) return strips;
  const heads = strips.flatMap((strip) => (strip.form === "gaps" ? (headsOf(strip.pieces) ?? []) : []));
  if (beside.some(({ pieces }) => heads.some((head) => isNear(head.start, pieces[0]!.start)))) return strips;
  const several = beside.filter(({ pieces }) => pieces.slice(2).some((piece) => designatorsOf(piece.text)));
  const isGroup =
    (below.length >= beside.length || several.length * 2 > beside.length) &&
    beside.every(({ pieces }) => namesGroup(pieces[0]!.text));
  if (!isGroup && heads.length > 0) return strips;
  const put = isGroup ? asHeading : behindNames;
  return strips.flatMap((strip) => (isBeside(strip) ? put(strip) : [strip]));
}

const isNear = (a: number, b: number) => Math.abs(a - b) <= SLACK;

const startsWithName = ({ form, pieces }: Strip) =>
  form === "gaps" && pieces.length > 0 && designatorsAt(pieces[0]!.text) !== null;

/** A line of a text, then designators, then more. */
const isBeside = ({ form, pieces }: Strip) =>
  form === "gaps" &&
  pieces.length > 2 &&
  /^[A-Za-z]/.test(pieces[0]!.text) &&
  designatorsAt(pieces[0]!.text) === null &&
  designatorsOf(pieces[1]!.text) !== null &&
  designatorsAt(pieces[2]!.text) === null;

const namesGroup = (text: string) => sectionName(text) !== null && !isKindHeading(text);

function asHeading(strip: Strip): Strip[] {
  const [name, ...rest] = strip.pieces;
  return [stripOfPieces(strip, [name!]), stripOfPieces(strip, rest)];
}

function behindNames(strip: Strip): Strip[] {
  const [before, names, ...rest] = strip.pieces;
  return [{ ...strip, pieces: [names!, ...rest, before!] }];
}
