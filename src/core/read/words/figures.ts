import type { Unit } from "../../quantity/notation/units.js";
import type { Join } from "./lexeme.js";
import { type Token, touches } from "./token.js";
import type { Amount, Figure } from "./words.js";

/** Units, as printed, that are also plain words or letters: they count only when written to the number. */
const ONLY_GLUED = new Set(["a", "c", "e", "in", "r", "f", "C", "E", "R"]);
const LONGEST_GLUED = 2;

/** The unit printed at a token (behind `number`), and where it ends. */
export function unitAt(tokens: readonly Token[], at: number): { unit: Unit; to: number } | null {
  const isHyphen = tokens[at]?.text === "-" && touches(tokens[at - 1], tokens[at]);
  const start = isHyphen ? at + 1 : at;
  const word = tokens[start];
  if (word?.type !== "word") return null;
  const { unit } = word.lexeme;
  if (!unit || unit.measure === "ratio") return null;
  if (isPlainWord(word) && !touches(tokens[at - 1], tokens[at])) return null;
  return withSecondWord(tokens, start + 1, unit);
}

const isPlainWord = ({ text }: Token) => text.length <= LONGEST_GLUED && ONLY_GLUED.has(text);

/** "K ohms", "meg. ohm", "M Ω": the prefix's measure is told by the next word. */
function withSecondWord(tokens: readonly Token[], at: number, unit: Unit): { unit: Unit; to: number } {
  if (unit.measure !== null) return { unit, to: at };
  let next = at;
  while (tokens[next]?.text === "-" || tokens[next]?.text === ".") next++;
  const word = tokens[next];
  const second = word?.type === "word" ? word.lexeme.unit : null;
  const isUnit = second && second.factor === 1 && (second.measure === "ohm" || second.measure === "farad");
  const isSpelled = isUnit && word!.key.length > 1;
  return isSpelled || (isUnit && touches(tokens[next - 1], word))
    ? { unit: { ...unit, measure: second.measure }, to: next + 1 }
    : { unit, to: at };
}

/** The figure that starts at a token: a number, a mixed number, a spelled-out number, with its unit. */
function figureAt(tokens: readonly Token[], at: number): Figure | null {
  const token = tokens[at];
  if (token?.type !== "number") return null;
  if (token.unit) return { number: token.value, unit: token.unit, from: at, to: at + 1 };
  const mixed = mixedAt(tokens, at);
  const number = mixed?.number ?? token.value;
  const next = mixed?.to ?? at + 1;
  const found = unitAt(tokens, next);
  return { number, unit: found?.unit ?? null, from: at, to: found?.to ?? next };
}

const LARGEST_WHOLE = 12;

/** A whole number and a fraction of it (1 1/2 meg, 1-13/16 in.); not 270 1/4W, where the fraction is the watts. */
function mixedAt(tokens: readonly Token[], at: number): { number: number; to: number } | null {
  const whole = tokens[at]!;
  const hyphen =
    tokens[at + 1]?.text === "-" && touches(whole, tokens[at + 1]) && touches(tokens[at + 1], tokens[at + 2]);
  const to = hyphen ? at + 2 : at + 1;
  const fraction = tokens[to];
  if (whole.fraction || !Number.isInteger(whole.value) || whole.value > LARGEST_WHOLE) return null;
  if (fraction?.type !== "number" || !fraction.fraction || fraction.value >= 1) return null;
  if (unitAt(tokens, to + 1)?.unit.measure === "watt") return null;
  return { number: whole.value + fraction.value, to: to + 1 };
}

/** Signs and words between the figures of one amount. */
export const JOINS: ReadonlyMap<string, Join> = new Map(Object.entries({
  to: "range", thru: "range", through: "range", bis: "range", à: "range", "…": "range", "...": "range",
  or: "or", oder: "or", ou: "or",
  "/": "list", "&": "list", "+": "list", and: "list", und: "list", plus: "list", x: "list", "×": "list",
  "-": "range", "–": "range", "—": "range",
} satisfies Record<string, Join>)); // biome-ignore format: a table

/** The joining sign or word at a token and where the next figure starts, or null. */
function joinAt(tokens: readonly Token[], at: number): { joiner: string; to: number } | null {
  const token = tokens[at];
  if (!token) return null;
  if (token.text === "." && tokens[at + 1]?.text === "." && tokens[at + 2]?.text === ".")
    return { joiner: "...", to: at + 3 };
  if (token.lexeme.join === null) return null;
  const isSign = token.key === "-" || token.key === "+" || token.key === "–";
  const isTolerance = isSign && !touches(tokens[at - 1], token) && touches(token, tokens[at + 1]);
  return isTolerance ? null : { joiner: token.key, to: at + 1 };
}

/** The amount that starts at a token: figures as far as they hang together. */
export function amountAt(tokens: readonly Token[], at: number): Amount | null {
  const first = figureAt(tokens, at);
  if (!first) return null;
  const figures = [first];
  let joiner = "";
  let to = first.to;
  for (;;) {
    const skip = tokens[to]?.text === "." && tokens[to + 1]?.text !== "." && tokens[to + 1]?.lexeme.join ? 1 : 0;
    const join = joinAt(tokens, to + skip);
    const next = join && figureAt(tokens, join.to);
    if (!join || !next || isPercent(tokens, next.to) || (joiner !== "" && join.joiner !== joiner)) break;
    if (join.joiner === "plus" && tokens[next.to]?.lexeme.side) break;
    if (!sameSort(figures.at(-1)!, next, join.joiner)) break;
    figures.push(next);
    joiner = joiner || join.joiner;
    to = next.to;
  }
  const spread = spreadUnits(figures, joiner);
  return { figures: spread, join: joinOf(spread, joiner), joiner, from: at, to, aside: null };
}

const isPercent = (tokens: readonly Token[], at: number) => /^(?:%|percent|per)$/.test(tokens[at]?.key ?? "");

const MOST_TIMES = 10;
const LARGEST_STEP = 10;
const LARGEST_BARE = 100;
const WIDEST_RANGE = 3;

/**
 * Figures of one amount measure the same thing: 1.8k/1W is a value and its watts, .05/400, 8/450 V and .02-600V a value
 * and its volts. A bare figure joins any; "x" counts.
 */
function sameSort(a: Figure, b: Figure, joiner: string): boolean {
  const [x, y] = [a.unit?.measure ?? null, b.unit?.measure ?? null];
  if (joiner === "x" || joiner === "×") return isTimes(a, y);
  if (joiner === "/" && a.unit === null && (y === null || y === "volt") && b.number >= LARGEST_STEP * a.number)
    return false;
  if (joiner === "-" && a.unit === null && y === "volt" && (a.number < 1 || isApart(a, b))) return false;
  if (!a.unit || !b.unit || x === y) return true;
  return (x === null && isValue(y)) || (y === null && isValue(x));
}

/** "25-25V", "8-150V" at the start of a text: a value and its volts, which would make no range. */
const isApart = (a: Figure, b: Figure) =>
  a.from === 0 && a.number <= LARGEST_BARE && (b.number <= a.number || b.number >= WIDEST_RANGE * a.number);

/** "2 x 500", and beyond a count the sections of a can: "16 x 8 mfd". */
const isTimes = (a: Figure, measure: string | null) =>
  Number.isInteger(a.number) &&
  a.unit === null &&
  (measure === "farad" || (a.number <= MOST_TIMES && measure !== "metre" && measure !== "volt"));

const isValue = (measure: string | null) => measure === "ohm" || measure === "farad" || measure === "henry";

function joinOf(figures: readonly Figure[], joiner: string): Join {
  if (figures.length === 1) return "one";
  const join = JOINS.get(joiner)!;
  if (join !== "range") return join;
  const isSpan =
    figures.length === 2 && figures[0]!.number * factor(figures[0]!) < figures[1]!.number * factor(figures[1]!);
  return isSpan || joiner.length > 1 ? "range" : "list";
}

const factor = (figure: Figure) => figure.unit?.factor ?? 1;

/** A unit printed once holds for the figures before it (20 TO 140UF), else for those behind it; in 100 TO 10K it does not. */
function spreadUnits(figures: readonly Figure[], joiner: string): readonly Figure[] {
  if (figures.length === 1) return figures;
  const [low, high, more] = figures;
  const isWord = joiner.length > 1 && JOINS.get(joiner) === "range";
  if (isWord && !more && !low!.unit && factor(high!) > 1 && low!.number > high!.number)
    return [{ ...low!, unit: { measure: high!.unit!.measure, factor: 1 } }, high!];
  const spread = [...figures];
  for (let i = spread.length - 2; i >= 0; i--)
    spread[i] = { ...spread[i]!, unit: spread[i]!.unit ?? spread[i + 1]!.unit };
  for (let i = 1; i < spread.length; i++) spread[i] = { ...spread[i]!, unit: spread[i]!.unit ?? spread[i - 1]!.unit };
  return spread;
}
