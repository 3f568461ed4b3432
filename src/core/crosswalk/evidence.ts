import type { ListedPart } from "../part.js";
import { closeNumber } from "./disagreements.js";
import { isSameMake } from "./makes.js";
import { sharedWords, type Worth } from "./words.js";

/**
 * A part with what is worked out of it once: its telling words, its place among its kind (0 first, 1 last), and how many
 * there are in its list of its kind, and of its kind and make.
 */
export type Candidate = {
  readonly part: ListedPart;
  readonly words: readonly string[];
  readonly place: number;
  readonly ofItsKind: number;
  readonly ofItsMake: number;
};

/** Points for and against two parts being the same one; more than 3 is good, below 0 is no match. */
const POINTS = {
  sameValue: 4, nearValue: 0.5, farValue: -2.5, otherValue: -8, oneValue: -1,
  sameParts: 5, otherParts: -3, sameVolts: 1, otherVolts: -1, sameWatts: 1, otherWatts: -1, sameMake: 1, otherMake: -1.5,
  samePiece: 1, otherPiece: -4, sameType: 2, otherType: -5, otherKind: -1, onlyOnes: 2.5,
  onlyOfMake: 2, place: -2,
}; // biome-ignore format: a table
const MOST_FOR_WORDS = 5;
const NEAR = 1.3;
const FAR = 2.3;

/** One sign that two parts are the same, or are not, by its name; `words` is what both lists say of the part. */
export type Sign = { readonly name: keyof typeof POINTS | "words"; readonly points: number };

/** Kinds that one list may call by the other's name: a coil a transformer, a rectifier a tube, a control a resistor. */
const LIKE_KINDS: readonly (readonly ListedPart["kind"][])[] = [
  ["inductor", "transformer"],
  ["rectifier", "tube"],
  ["potentiometer", "resistor"],
];

/** Every sign for and against two parts being the same; null where their kinds exclude it. */
export function signsOf(a: Candidate, b: Candidate, worthOf: Worth): readonly Sign[] | null {
  const isLike = a.part.kind === b.part.kind;
  if (!isLike && !LIKE_KINDS.some((kinds) => kinds.includes(a.part.kind) && kinds.includes(b.part.kind))) return null;
  const names = [
    ...(isLike ? [] : (["otherKind"] as const)),
    ...valueSigns(a.part, b.part),
    ...contentSigns(a.part, b.part),
    ...ratingSigns(a.part, b.part),
    ...pieceSigns(a.part, b.part),
    ...typeSigns(a, b),
    ...(isLike ? onlySigns(a, b) : []),
  ];
  const shared = sharedWords(a.words, b.words).map(([own, other]) =>
    Math.min(worthOf(a.part.kind, own), worthOf(b.part.kind, other)),
  );
  const points = Math.min(
    MOST_FOR_WORDS,
    shared.reduce((sum, each) => sum + each, 0),
  );
  return [
    ...names.map((name) => ({ name, points: POINTS[name] })),
    { name: "words", points },
    { name: "place", points: placePoints(a, b) },
  ];
}

/** Among few of a kind the order says little. */
const ENOUGH = 8;

const placePoints = (a: Candidate, b: Candidate) =>
  POINTS.place * (a.place - b.place) ** 2 * Math.min(1, (Math.min(a.ofItsKind, b.ofItsKind) - 1) / ENOUGH);

function onlySigns(a: Candidate, b: Candidate): readonly Name[] {
  if (a.ofItsKind === 1 && b.ofItsKind === 1) return ["onlyOnes"];
  const make = makeOf(a.part);
  const isOnly = make !== null && make === makeOf(b.part) && a.ofItsMake === 1 && b.ofItsMake === 1;
  return isOnly ? ["onlyOfMake"] : [];
}

/** What a part is made of or how it is built, as its list says. */
export const makeOf = ({ dielectric, construction }: ListedPart): string | null => dielectric ?? construction;

type Name = Exclude<Sign["name"], "words">;

/** How the values of two parts stand to each other. */
export function valueSigns(a: ListedPart, b: ListedPart): readonly Name[] {
  const [x, y] = [a.value ?? a.valueMax, b.value ?? b.valueMax];
  if (x === null && y === null) return [];
  if (x === null || y === null) return ["oneValue"];
  if (closeNumber(x, y)) return ["sameValue"];
  const ratio = Math.max(x, y) / Math.min(x, y);
  return [ratio <= NEAR ? "nearValue" : ratio <= FAR ? "farValue" : "otherValue"];
}

function contentSigns(a: ListedPart, b: ListedPart): readonly Name[] {
  const listed = (part: ListedPart) =>
    (part.sections ?? part.inner)
      ?.map((piece) => ("farads" in piece ? piece.farads : piece.value) ?? 0)
      .sort((x, y) => x - y);
  const [x, y] = [listed(a), listed(b)];
  if (!x || !y) return x || y ? ["oneValue"] : [];
  return x.length === y.length && x.every((value, i) => closeNumber(value, y[i]!)) ? ["sameParts"] : ["otherParts"];
}

function ratingSigns(a: ListedPart, b: ListedPart): readonly Name[] {
  const of = <T>(x: T | null, y: T | null, isSame: (x: T, y: T) => boolean, names: readonly [Name, Name]) =>
    x === null || y === null ? [] : [isSame(x, y) ? names[0] : names[1]];
  const [x, y] = [makeOf(a), makeOf(b)];
  return [
    ...of(a.volts, b.volts, closeNumber, ["sameVolts", "otherVolts"]),
    ...of(a.watts, b.watts, closeNumber, ["sameWatts", "otherWatts"]),
    ...of<string>(x, y, isSameMake, ["sameMake", "otherMake"]),
  ];
}

/** A piece of a larger part answers to a piece of a larger part only. */
function pieceSigns(a: ListedPart, b: ListedPart): readonly Name[] {
  if (a.partOf === null && b.partOf === null) return [];
  if (a.partOf !== null && b.partOf !== null) return ["samePiece"];
  return a.kind === "switch" ? [] : ["otherPiece"];
}

const TYPED = new Set<ListedPart["kind"]>(["tube", "rectifier", "lamp", "other"]);
/** A type number (6BQ7A, ECC83, 1N34, OA79): figures and letters mixed, and no figure with a unit. */
const TYPE = /^(?=.*\d)(?=.*[a-z])(?!\d+(?:v|ma?|a|w|k[cv]?|mc|pf?|mfd?)$)[a-z\d]{3,}$/;

/** Type numbers settle which tube or diode it is. */
function typeSigns(a: Candidate, b: Candidate): readonly Name[] {
  if (!TYPED.has(a.part.kind)) return [];
  const [x, y] = [a.words, b.words].map((words) => words.filter((word) => TYPE.test(word)));
  if (x!.length === 0 || y!.length === 0) return [];
  return [x!.some((type) => y!.includes(type)) ? "sameType" : "otherType"];
}
