import type { ListedPart } from "../part.js";
import { sameNumber } from "./disagreements.js";
import { alike, type Worth } from "./words.js";

/** A part with what is worked out of it once: its telling words, and its place among its kind (0 first, 1 last). */
export type Candidate = { readonly part: ListedPart; readonly words: readonly string[]; readonly place: number };

/** Points for and against two parts being the same one; more than 3 is good, below 0 is no match. */
const POINTS = {
  sameValue: 4, nearValue: 0.5, farValue: -2.5, otherValue: -8, oneValue: -1,
  sameParts: 5, otherParts: -3, sameRating: 1, otherRating: -1, sameMake: 1, otherMake: -1.5,
  sameOwner: 1, otherOwner: -4, sameType: 2, otherType: -5, mostForWords: 5, perPlace: -2,
}; // biome-ignore format: a table
const NEAR = 1.3;
const FAR = 2.3;
/** A type number of a tube, diode or lamp: figures and letters mixed. */
const TYPE = /^\d+[a-z]+\d+[a-z]*$|^\d[a-z]\d+$/;

/** How much two parts look alike, in points. */
export function likeness(a: Candidate, b: Candidate, worthOf: Worth): number {
  if (a.part.kind !== b.part.kind) return Number.NEGATIVE_INFINITY;
  return (
    values(a.part, b.part) +
    contents(a.part, b.part) +
    ratings(a.part, b.part) +
    make(a.part, b.part) +
    owner(a.part, b.part) +
    inWords(a, b, worthOf) +
    POINTS.perPlace * (a.place - b.place) ** 2
  );
}

function values(a: ListedPart, b: ListedPart): number {
  const [x, y] = [a.value ?? a.valueMax, b.value ?? b.valueMax];
  if (x === null && y === null) return 0;
  if (x === null || y === null) return POINTS.oneValue;
  if (sameNumber(x, y)) return POINTS.sameValue;
  const ratio = Math.max(x, y) / Math.min(x, y);
  return ratio <= NEAR ? POINTS.nearValue : ratio <= FAR ? POINTS.farValue : POINTS.otherValue;
}

function contents(a: ListedPart, b: ListedPart): number {
  const listed = (part: ListedPart) =>
    (part.sections ?? part.inner)
      ?.map((piece) => ("farads" in piece ? piece.farads : piece.value) ?? 0)
      .sort((x, y) => x - y);
  const [x, y] = [listed(a), listed(b)];
  if (!x || !y) return x || y ? POINTS.oneValue : 0;
  return x.length === y.length && x.every((value, i) => sameNumber(value, y[i]!))
    ? POINTS.sameParts
    : POINTS.otherParts;
}

function ratings(a: ListedPart, b: ListedPart): number {
  let points = 0;
  for (const field of ["watts", "volts"] as const) {
    const [x, y] = [a[field], b[field]];
    if (x !== null && y !== null) points += sameNumber(x, y) ? POINTS.sameRating : POINTS.otherRating;
  }
  return points;
}

function make(a: ListedPart, b: ListedPart): number {
  const [x, y] = [a.dielectric ?? a.construction, b.dielectric ?? b.construction];
  if (x === null || y === null) return 0;
  return x === y ? POINTS.sameMake : POINTS.otherMake;
}

/** A piece of a larger part answers to a piece of a larger part only. */
function owner(a: ListedPart, b: ListedPart): number {
  if (a.partOf === null && b.partOf === null) return 0;
  return a.partOf !== null && b.partOf !== null ? POINTS.sameOwner : a.kind === "switch" ? 0 : POINTS.otherOwner;
}

function inWords(a: Candidate, b: Candidate, worthOf: Worth): number {
  let points = 0;
  for (const word of a.words) {
    const match = b.words.find((other) => alike(word, other));
    if (match) points += Math.min(worthOf(a.part.kind, word), worthOf(a.part.kind, match));
  }
  return Math.min(POINTS.mostForWords, points) + types(a.words, b.words);
}

/** Type numbers (6BQ7A, 1N34) settle which tube or diode it is. */
function types(a: readonly string[], b: readonly string[]): number {
  const [x, y] = [a, b].map((words) => words.filter((word) => TYPE.test(word)));
  if (x!.length === 0 || y!.length === 0) return 0;
  return x!.some((type) => y!.includes(type)) ? POINTS.sameType : POINTS.otherType;
}
