import type { Kind, ValueState, Warning } from "../../part.js";
import type { Unit } from "../../quantity/notation/units.js";
import type { Amount, Words } from "../words/words.js";
import { type Alternatives, alternatives } from "./alternatives.js";
import { type Context, MEASURE_OF } from "./context.js";
import { type Clues, type InBase, inBase } from "./inBase.js";
import { ofRoles, type Text } from "./texts.js";
import { lostFigure, stateOf } from "./valueState.js";

/** What a part's texts say of its value; `list` holds the values of several sections or elements printed together. */
export type ReadValues = {
  readonly value: number | null;
  readonly printed: number | null;
  readonly state: ValueState;
  readonly min: number | null;
  readonly max: number | null;
  readonly list: readonly number[] | null;
  readonly warnings: readonly Warning[];
};

const NOTHING: ReadValues = {
  value: null,
  printed: null,
  state: "missing",
  min: null,
  max: null,
  list: null,
  warnings: [],
};

type Read = { readonly amount: Amount; readonly words: Words; readonly values: readonly InBase[] };

/** The value, range, alternatives or list of values that a part's texts state. */
export function readValues(texts: readonly Text[], clues: Omit<Clues, "head">, context: Context): ReadValues {
  const candidates = candidatesOf(texts, clues, context);
  const state = stateOf(texts);
  if (state === "not-fitted" && candidates.length === 0) return { ...NOTHING, state };
  const main = candidates[0];
  if (!main) return state ? { ...NOTHING, state } : withoutFigure(lostFigure(texts, clues.kind));
  if (state === "selected-in-test") return selected(candidates);
  const read =
    sectionsInColumns(texts, candidates, clues.kind) ??
    elementsOf(candidates, clues.kind) ??
    ofAmount(main, clues.kind);
  const others = alternatives(texts, main.amount, clues, context);
  const full = others.values.length > 0 && read.value !== null ? withAlternatives(read, others) : read;
  return state === "not-fitted" ? { ...full, state } : full;
}

const withoutFigure = (lost: Warning | null): ReadValues =>
  lost ? { ...NOTHING, state: "unreadable", warnings: [lost] } : NOTHING;

/** The amounts that can be the part's value, best first: of the value column, then of the description. */
function candidatesOf(texts: readonly Text[], clues: Omit<Clues, "head">, context: Context): Read[] {
  const hasDescription = texts.some((text) => text.role === "description" || text.role === "value");
  const roles = hasDescription ? (["value", "description"] as const) : (["value", "rating"] as const);
  const found = roles.flatMap((role) =>
    ofRoles(texts, role).flatMap(({ words, head }) => {
      const own = words.amounts.filter((amount) => amount.aside === null);
      return inOrder(own, clues.kind).flatMap((amount) =>
        readAmount(amount, words, { ...clues, head, isValue: role === "value" }, context),
      );
    }),
  );
  return found.length > 0 ? found : fromRemarks(texts, clues, context);
}

/** Amounts with a unit before bare ones; a bare one counts only where it stands first or alone. */
function inOrder(amounts: readonly Amount[], kind: Kind): Amount[] {
  const wanted = MEASURE_OF[kind];
  const united = amounts.filter((amount) => amount.figures[0]!.unit !== null);
  const explicit = united.filter((amount) => amount.figures[0]!.unit!.measure === wanted);
  const first = amounts.find((amount) => amount.figures[0]!.unit === null);
  return [...explicit, ...united.filter((amount) => !explicit.includes(amount)), ...(first ? [first] : [])];
}

/** A value printed only among the remarks ("filter choke, 6 H.") counts when its unit is printed. */
function fromRemarks(texts: readonly Text[], clues: Omit<Clues, "head">, context: Context): Read[] {
  return ofRoles(texts, "remarks").flatMap(({ words }) =>
    words.amounts
      .filter(
        (amount) => amount.aside === null && amount.figures.some(({ unit }) => isOf(unit, MEASURE_OF[clues.kind])),
      )
      .flatMap((amount) => readAmount(amount, words, { ...clues, head: null }, context)),
  );
}

/** Whether a unit says by itself what it measures: mfd; K and meg are ohms. */
const isOf = (unit: Unit | null, measure: string | undefined) =>
  unit !== null && (unit.measure === measure || (measure === "ohm" && unit.measure === null && unit.factor >= 1e3));

/** The figures of an amount in base units, none when one measures something else; bare limits of a range share the unit of the larger. */
function readAmount(amount: Amount, words: Words, clues: Clues, context: Context): Read[] {
  const [low, high] = amount.figures;
  const isBareRange = amount.join === "range" && amount.figures.length === 2 && !low!.unit && !high!.unit;
  const top = isBareRange ? inBase(high!, words, clues, context) : null;
  const values = top
    ? [{ ...top, value: top.value && (top.value * low!.number) / high!.number }, top]
    : amount.figures.map((figure) => inBase(figure, words, { ...clues, several: amount.join === "list" }, context));
  return values.every((value) => value !== null) ? [{ amount, words, values: values as InBase[] }] : [];
}

/** "12M, 5M and 250 ohms" on one resistor: the elements of a tapped one, in the order printed. */
function elementsOf(candidates: readonly Read[], kind: Kind): ReadValues | null {
  const last = candidates.find(({ amount }) => amount.joiner === "and" || amount.joiner === "&");
  const all = candidates.filter(({ words, amount }) => words === last?.words && amount.figures[0]!.unit !== null);
  const values = [...all].sort((a, b) => a.amount.from - b.amount.from).flatMap(numbers);
  if (kind !== "resistor" || all.length < 2 || values.some((value) => value === null)) return null;
  return { ...NOTHING, list: values as number[], state: "stated", warnings: warningsOf(all) };
}

/** A can whose sections stand in columns of their own, all in one unit ("A mfd", "B mfd"). */
function sectionsInColumns(texts: readonly Text[], candidates: readonly Read[], kind: Kind): ReadValues | null {
  const cells = ofRoles(texts, "value");
  const isOneUnit = cells.every(({ head }) => head?.factor === cells[0]!.head?.factor);
  if (kind !== "capacitor" || cells.length < 2 || !isOneUnit) return null;
  const reads = cells.flatMap(({ words }) => candidates.find((read) => read.words === words && single(read)) ?? []);
  const list = reads.flatMap(numbers).filter((value) => value !== null);
  return list.length === cells.length ? { ...NOTHING, list, state: "stated", warnings: warningsOf(reads) } : null;
}

const single = (read: Read) => read.values.length === 1;
const warningsOf = (reads: readonly Read[]) => reads.flatMap((read) => read.values.flatMap((value) => value.warnings));
const numbers = (read: Read) => read.values.map((value) => value.value);

/** Selected in test: a single figure is the nominal value, two are limits. */
function selected(candidates: readonly Read[]): ReadValues {
  const nominal = candidates.find(single);
  const limits = candidates.find((read) => read.values.length === 2);
  const [min = null, max = null] = limits ? numbers(limits) : [];
  const value = nominal && nominal !== limits ? nominal.values[0]!.value : null;
  const printed = nominal ? nominal.amount.figures[0]!.number : null;
  return { ...NOTHING, value, printed, min, max, state: "selected-in-test", warnings: warningsOf(candidates) };
}

function ofAmount(read: Read, kind: Kind): ReadValues {
  const { amount } = read;
  const values = numbers(read);
  const warnings = warningsOf([read]);
  if (amount.join === "one") {
    const state = values[0] === null ? "unreadable" : "stated";
    return { ...NOTHING, value: values[0]!, printed: amount.figures[0]!.number, state, warnings };
  }
  if (values.some((value) => value === null)) return { ...NOTHING, state: "unreadable", warnings };
  const all = values as number[];
  const span = { min: Math.min(...all), max: Math.max(...all) };
  if (amount.join === "or") return { ...NOTHING, ...span, state: "alternatives", warnings };
  const isSpan = amount.join === "range" ? !isList(amount, read.words, kind) : isTrimmer(amount);
  if (isSpan) return { ...NOTHING, ...span, state: "range", warnings };
  if (kind === "potentiometer" || kind === "inductor" || kind === "thermistor")
    return { ...NOTHING, value: all[0]!, printed: amount.figures[0]!.number, state: "stated", warnings };
  return { ...NOTHING, list: listed(amount, all), state: "stated", warnings };
}

/** "4/20 pF": so few picofarads with a stroke are the limits of a trimmer. */
const isTrimmer = ({ joiner, figures: [low, high, more] }: Amount) =>
  joiner === "/" && !more && low!.unit?.factor === 1e-12 && high!.unit?.factor === 1e-12 && low!.number < high!.number;

const MOST_SECTIONS = 4;

/** "2 x 0.5 uf" is two of 0.5; "8 x 8 mf" is one can of 8 and 8. */
function listed(amount: Amount, values: readonly number[]): number[] {
  const isCount = (amount.joiner === "x" || amount.joiner === "×") && amount.figures[0]!.number <= MOST_SECTIONS;
  if (!isCount) return [...values];
  return Array.from({ length: amount.figures[0]!.number }, () => values.at(-1)!);
}

/** Two capacitances with a dash are the sections of a can when they are microfarads of an electrolytic or paper block. */
function isList(amount: Amount, words: Words, kind: Kind): boolean {
  if (kind !== "capacitor" || (amount.joiner !== "-" && amount.joiner !== "–")) return false;
  const isMicro = amount.figures.every((figure) => figure.unit?.factor === 1e-6);
  const makes = words.meanings.filter((meaning) => meaning.field === "dielectric").map((meaning) => meaning.value);
  return (
    makes.includes("electrolytic") ||
    (isMicro && !words.meanings.some((meaning) => meaning.value === "variable") && makes[0] !== "ceramic")
  );
}

function withAlternatives(read: ReadValues, { values, current }: Alternatives): ReadValues {
  const all = [read.value!, ...values];
  if (values.every((value) => value === read.value)) return read;
  const value = current ?? read.value;
  return { ...read, value, state: "alternatives", min: Math.min(...all), max: Math.max(...all) };
}
