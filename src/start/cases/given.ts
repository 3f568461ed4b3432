import { GIVEN_NAMES, GIVEN_SETTINGS, type GivenName } from "./givenNames.js";
import { figureOf, type Measure, type Unitless, unitless } from "./givenUnits.js";

/** The figures of a case in base units, by name; a list stays a list. What no name fits stays in `rest`. */
export type Given = {
  readonly figures: ReadonlyMap<GivenName, readonly number[]>;
  readonly settings: Readonly<Record<string, number | string>>;
  readonly rest: Readonly<Record<string, unknown>>;
};

/** One figure of a case for one of its pieces; null where it is not given. */
export type Figure = (name: GivenName) => number | null;

type Numbers = { readonly numbers: readonly number[]; readonly measure: Measure | null };

/** Numbers of a value: one or a list, as numbers or as texts with a unit ("62 MΩ"); null where any of them is none. */
function numbersOf(value: unknown): Numbers | null {
  const list = Array.isArray(value) ? value : [value];
  const read = list.map((one) =>
    typeof one === "number" ? { number: one, measure: null } : typeof one === "string" ? figureOf(one) : null,
  );
  if (list.length === 0 || read.some((one) => one === null)) return null;
  return { numbers: read.map((one) => one!.number), measure: read[0]!.measure };
}

/** The figure that a key names, read with the unit it may end in; the value's own unit outranks the key's. */
function namedFigure(key: string, own: Measure | null): { readonly figure: GivenName; readonly factor: number } | null {
  for (const { name, measure, factor } of unitless(key)) {
    const measures = own ?? measure;
    const row = GIVEN_NAMES.find(
      ([words, , allowed, onlyWithUnit]) =>
        words.test(name) && (measures === null ? !onlyWithUnit : allowed.includes(measures)),
    );
    if (row) return { figure: row[1], factor: own === null ? factor : 1 };
  }
  return null;
}

function namedSetting(key: string, settings: Readonly<Record<string, unknown>>): string | null {
  if (key in settings) return key;
  const fits = ({ name, measure }: Unitless) =>
    measure === "amps" || measure === "farads" ? undefined : GIVEN_SETTINGS.find(([words]) => words.test(name));
  return unitless(key).map(fits).find(Boolean)?.[1] ?? null;
}

/** Keys and values with what stands one level deeper under both names: `{ reading: { ohms: 5 } }` is also `readingOhms`. */
const flat = (given: Readonly<Record<string, unknown>>): readonly (readonly [string, unknown])[] =>
  Object.entries(given).flatMap(([key, value]): (readonly [string, unknown])[] => {
    if (typeof value !== "object" || value === null || Array.isArray(value)) return [[key, value]];
    return Object.entries(value).flatMap(([inner, each]) => [
      [`${key}${inner.charAt(0).toUpperCase()}${inner.slice(1)}`, each] as const,
      ...(typeof each === "boolean" ? [[inner, each] as const] : []),
    ]);
  });

/**
 * Reads the `given` of a case, whatever the writer called his figures: `vActual`, `peakV`, `insMohm`, `stock_uF`, `"62 MΩ"`.
 *
 * Keys of settings (`line_now_V`) and their usual short names change the settings.
 *
 * @example givenOf({ peakV: 420, stock_uF: [10, 15] }, {}).figures.get("warmUpVolts") // [420]
 */
export function givenOf(
  given: Readonly<Record<string, unknown>>,
  settings: Readonly<Record<string, number | string>>,
): Given {
  const figures = new Map<GivenName, readonly number[]>();
  const changed: Record<string, number | string> = {};
  const rest: Record<string, unknown> = {};
  for (const [key, value] of flat(given)) {
    const setting = namedSetting(key, settings);
    if (setting !== null && (typeof value === "number" || typeof value === "string")) {
      changed[setting] = asSetting(value, settings[setting]);
      continue;
    }
    const read = numbersOf(value);
    const found = read && namedFigure(key, read.measure);
    if (read && found && !figures.has(found.figure))
      figures.set(
        found.figure,
        read.numbers.map((number) => Number((number * found.factor).toPrecision(12))),
      );
    else rest[key] = value;
  }
  return { figures, settings: changed, rest };
}

/** A setting's value as its sheet holds it: a number where the default is one, a choice in its own words. */
function asSetting(value: number | string, usual: number | string | undefined): number | string {
  if (typeof value === "number") return value;
  if (typeof usual === "number") return figureOf(value)?.number ?? value;
  return value
    .trim()
    .toLowerCase()
    .replace(/^(never|not)[ _-]/, "not-");
}
