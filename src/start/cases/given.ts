import { GIVEN_NAMES, GIVEN_SETTINGS, GIVEN_UNITS, type GivenName } from "./givenNames.js";

/** The figures of a case in base units, by name; a list stays a list. What no name fits stays in `rest`. */
export type Given = {
  readonly figures: ReadonlyMap<GivenName, readonly number[]>;
  readonly settings: Readonly<Record<string, number | string>>;
  readonly rest: Readonly<Record<string, unknown>>;
};

/** One figure of a case for one of its pieces; null where it is not given. */
export type Figure = (name: GivenName) => number | null;

/** A key without its unit, and the unit's factor to base units. */
function withoutUnit(key: string): { readonly name: string; readonly factor: number } {
  for (const [unit, factor] of GIVEN_UNITS) {
    const name = key.replace(unit, "");
    if (name !== key && name !== "") return { name: plain(name), factor };
  }
  return { name: plain(key), factor: 1 };
}

const plain = (key: string) => key.toLowerCase().replace(/[^a-z0-9µ]/g, "");

const named = <T>(rows: readonly (readonly [RegExp, T])[], names: readonly string[]): T | undefined =>
  rows.find(([words]) => names.some((name) => words.test(name)))?.[1];

const numbersOf = (value: unknown): readonly number[] | null => {
  const list = Array.isArray(value) ? value : [value];
  return list.every((one) => typeof one === "number") ? (list as number[]) : null;
};

/**
 * Reads the `given` of a case, whatever the writer called his figures: `vActual`, `peakV`, `insMohm`, `stock_uF`.
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
  for (const [key, value] of Object.entries(given)) {
    const { name, factor } = withoutUnit(key);
    const setting = key in settings ? key : named(GIVEN_SETTINGS, [name, plain(key)]);
    const figure = named(GIVEN_NAMES, [name]) ?? named(GIVEN_NAMES, [plain(key)]);
    const numbers = numbersOf(value);
    if (setting !== undefined && (typeof value === "number" || typeof value === "string")) changed[setting] = value;
    else if (figure !== undefined && numbers !== null && !figures.has(figure))
      figures.set(
        figure,
        numbers.map((number) => Number((number * factor).toPrecision(12))),
      );
    else rest[key] = value;
  }
  return { figures, settings: changed, rest };
}
