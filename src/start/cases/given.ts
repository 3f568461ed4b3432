import {
  type FigureName,
  figureNamed,
  hasSeveral,
  type OfPart,
  type SaidFigures,
  type SaidMeasure,
  type Stated,
  saidFigures,
} from "../../core/index.js";
import { settingNamed, settingValue } from "./givenSettings.js";
import { isOfPieces, labelsOf, statementOf, wordsOf } from "./label.js";
import { numberIn } from "./numberIn.js";

/** The figures of a case in base units, by name; a list stays a list. What no name fits stays in `rest`. */
export type Given = {
  readonly figures: SaidFigures;
  /** Figures told by nothing but a unit: they repeat the list, or else are what was found. */
  readonly bare: ReadonlySet<FigureName>;
  readonly settings: Readonly<Record<string, number | string>>;
  readonly rest: Readonly<Record<string, unknown>>;
};

/** One figure of a case for one of its pieces; null where it is not given. */
export type Figure = Stated;

type Numbers = { readonly numbers: readonly number[]; readonly measure: SaidMeasure | null };

/** Shares that people give as percent even where they do not say so. */
const SHARES: readonly FigureName[] = ["tolerance", "accuracy", "startShare"];

/** Numbers of a value: one or a list, as numbers or as texts with a unit ("62 MΩ"); null where any of them is none. */
function numbersOf(value: unknown): Numbers | null {
  const list = Array.isArray(value) ? value : [value];
  const read = list.map((one) =>
    typeof one === "number" ? { number: one, measure: null } : typeof one === "string" ? numberIn(one) : null,
  );
  if (list.length === 0 || read.some((one) => one === null)) return null;
  return { numbers: read.map((one) => one!.number), measure: read[0]!.measure };
}

/** The figure that a label names with its numbers in base units; the value's own unit outranks the label's. */
function labelled(key: string, { numbers, measure: own }: Numbers, of: OfPart) {
  const labels = labelsOf(key);
  for (const isLoose of [false, true]) {
    for (const label of labels) {
      if (isLoose && label.measure === null && own === null) continue;
      const figure = figureNamed(statementOf({ ...label, measure: own ?? label.measure }, numbers), of, isLoose);
      if (figure) {
        const inBase = numbers.map((number) => scaled(number, own ? 1 : label.factor, figure));
        return { figure, numbers: inBase, isBare: label.isBare };
      }
    }
  }
  return null;
}

function scaled(number: number, factor: number, figure: FigureName): number {
  const isPercent = factor === 1 && SHARES.includes(figure) && number >= 1;
  return Number((number * (isPercent ? 0.01 : factor)).toPrecision(12));
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/**
 * Keys and values with what stands deeper under both names: `{ reading: { ohms: 5 } }` is also `readingOhms`, and so is
 * each of a list of such.
 */
const flat = (given: Readonly<Record<string, unknown>>): readonly (readonly [string, unknown])[] =>
  Object.entries(given).flatMap(([key, value]): (readonly [string, unknown])[] => {
    const records = Array.isArray(value) && !isOfPieces(key) ? value.filter(isRecord) : isRecord(value) ? [value] : [];
    if (records.length === 0) return [[key, value]];
    return records.flatMap((record) =>
      Object.entries(record).flatMap(([inner, each]) => [
        [`${key}${inner.charAt(0).toUpperCase()}${inner.slice(1)}`, each] as const,
        ...(typeof each === "boolean" ? [[inner, each] as const] : []),
      ]),
    );
  });

/** Figures of the set, which are settings of it. */
const OF_THE_SET: readonly (readonly [FigureName, string])[] = [
  ["lineVolts", "line_now_V"],
  ["lineDesignVolts", "line_design_V"],
  ["lineHertz", "line_hz"],
  ["gridShiftVolts", "grid_shift_V"],
];

/**
 * Reads the `given` of a case, whatever the writer called his figures, and what its context states beside it: `vActual`,
 * `peakV`, `insMohm`, `stock_uF`, `"62 MΩ"`, "15 V on it". A label outranks the context.
 *
 * Keys of settings (`line_now_V`) and their words change the settings.
 *
 * @example givenOf({ peakV: 420, stock_uF: [10, 15] }, "", part, {}).figures.get("warmUpVolts") // [420]
 */
export function givenOf(
  given: Readonly<Record<string, unknown>>,
  context: string,
  of: OfPart,
  settings: Readonly<Record<string, number | string>>,
): Given {
  const figures = new Map<FigureName, readonly number[]>();
  const bare = new Set<FigureName>();
  const changed: Record<string, number | string> = {};
  const rest: Record<string, unknown> = {};
  for (const [key, value] of flat(given)) {
    const setting = settingNamed(key, settings);
    const numbers = numbersOf(value);
    const found = setting === null && numbers ? labelled(key, numbers, of) : null;
    if (setting !== null && (typeof value === "number" || typeof value === "string"))
      changed[setting] = settingValue(value, settings[setting]);
    else if (found && !figures.has(found.figure)) {
      figures.set(found.figure, found.numbers);
      if (found.isBare) bare.add(found.figure);
    } else if (found && hasSeveral(found.figure))
      figures.set(found.figure, [...figures.get(found.figure)!, ...found.numbers]);
    else rest[key] = value;
  }
  for (const text of [...textsOf(rest), context])
    for (const [figure, numbers] of saidFigures(text, of)) if (!figures.has(figure)) figures.set(figure, numbers);
  for (const [figure, setting] of OF_THE_SET)
    if (figures.has(figure) && !(setting in changed)) changed[setting] = figures.get(figure)![0]!;
  return { figures, bare, settings: changed, rest };
}

/** What is given in sentences, each behind the words of its label. */
const textsOf = (rest: Readonly<Record<string, unknown>>): readonly string[] =>
  Object.entries(rest).flatMap(([key, value]) =>
    typeof value === "string" ? [`${wordsOf(key).join(" ")} ${value}`] : [],
  );
