import * as core from "../core/index.js";
import { amount, choice, count, rating, type Sized, sizeAndKind } from "./ask.js";
import { spill } from "./cell.js";
import { stockIn } from "./stockRange.js";

/**
 * What a value is made up from.
 * @customenum {string}
 */
export enum PartKind {
  Resistor = "resistor",
  Capacitor = "capacitor",
  Inductor = "inductor",
}

/**
 * Which of several made-up values comes first.
 * @customenum {string}
 */
export enum Preference {
  Fewest = "fewest",
  Nearest = "nearest",
}

const KINDS = ["resistor", "capacitor", "inductor"] as const;
const PREFERENCES = ["fewest", "nearest"] as const;

/**
 * The two standard parts in series that come nearest to a value, with what share of the whole each bears: of the watts for resistors (ohms), of the volts for capacitors (farads).
 * @customfunction SPLIT_SERIES
 * @helpurl reference.html#SPLIT_SERIES
 * @param wanted The value wanted: a number in ohms or farads, or text such as 3 M or 60 pF.
 * @param stock A series such as E12 (E24 when left out), or a range of values.
 * @param list How many pairs to list, best first: 1 when left out.
 * @param kind resistor or capacitor, where the value is a number; below 0.1 it is a capacitor when left out.
 * @returns A row for each pair: both values, what they make, by what ratio it is off, both shares.
 * @example LUG.SPLIT_SERIES(3000, {1500; 6800}) -> {1500, 1500, 3000, 0, 0.5, 0.5}
 */
export function splitSeries(
  wanted: unknown[][],
  stock?: unknown[][],
  list?: unknown[][],
  kind?: PartKind[][],
): unknown[][] {
  return splitting("series", wanted, stock, list, kind);
}

/**
 * The two standard parts in parallel that come nearest to a value, with what share of the whole each bears: of the watts for resistors (ohms), of the charge for capacitors (farads).
 * @customfunction SPLIT_PARALLEL
 * @helpurl reference.html#SPLIT_PARALLEL
 * @param wanted The value wanted: a number in ohms or farads, or text such as 3 k or 250 pF.
 * @param stock A series such as E12 (E24 when left out), or a range of values.
 * @param list How many pairs to list, best first: 1 when left out.
 * @param kind resistor or capacitor, where the value is a number; below 0.1 it is a capacitor when left out.
 * @returns A row for each pair: both values, what they make, by what ratio it is off, both shares.
 * @example LUG.SPLIT_PARALLEL(3000, {1500; 6000}) -> {6000, 6000, 3000, 0, 0.5, 0.5}
 */
export function splitParallel(
  wanted: unknown[][],
  stock?: unknown[][],
  list?: unknown[][],
  kind?: PartKind[][],
): unknown[][] {
  return splitting("parallel", wanted, stock, list, kind);
}

function splitting(
  only: "series" | "parallel",
  wanted: unknown[][],
  stock?: unknown[][],
  list?: unknown[][],
  kind?: PartKind[][],
): unknown[][] {
  return spill(
    [sizeAndKind(wanted, "wanted"), count(list, "list", 1), choice(kind, "kind", KINDS, null)],
    (sized, list, asked) => {
      const kind = kindOf(sized, asked);
      const found = core.splitPair({
        kind,
        wanted: sized.value,
        only,
        list,
        stock: stockIn(stock ?? "E24", sized.value),
      });
      const share = (one: core.Share) =>
        kind !== "capacitor" ? one.power : only === "series" ? one.volts : one.current;
      return found.map(({ parts, value, off, shares }) => [
        ...parts.map((part) => part.value),
        value,
        off,
        ...shares.map(share),
      ]);
    },
  );
}

/**
 * The best ways to make a value (ohms, farads or henries) up from one to four parts in series and parallel, each part within its watts and volts.
 * @customfunction MAKE_UP
 * @helpurl reference.html#MAKE_UP
 * @param wanted The value wanted: a number in ohms, farads or henries, or text such as 3.3 M or 250 pF.
 * @param stock A series such as E12 (E24 when left out), or a range with a value or a series in each row and, as far as needed, watts, volts, tolerance, price and pieces of one such part beside it.
 * @param within How far off it may be, with every part at either end of its tolerance: a ratio, 1% when left out.
 * @param parts Parts at most: 1 to 4, 4 when left out.
 * @param list How many ways to list: 1 when left out.
 * @param watts Watts that the whole has to bear, where that matters.
 * @param volts Volts that the whole has to bear, where that matters.
 * @param price What all parts together may cost, in the currency of the range.
 * @param prefer fewest parts first (when left out), or nearest first.
 * @param kind resistor, capacitor or inductor, where the value is a number; below 0.1 it is a capacitor when left out.
 * @returns A row for each way: how the parts are joined (+ in series, || in parallel), what they make, by what ratio it is off, each part's share of the watts (of the volts for capacitors), and the price.
 * @example LUG.MAKE_UP("3.2 M", {1500000; 1600000}, 1%) -> {"1.6 M + 1.6 M", 3200000, 0, "50 %, 50 %", ""}
 */
export function makeUp(
  wanted: unknown[][],
  stock?: unknown[][],
  within?: unknown[][],
  parts?: unknown[][],
  list?: unknown[][],
  watts?: unknown[][],
  volts?: unknown[][],
  price?: unknown[][],
  prefer?: Preference[][],
  kind?: PartKind[][],
): unknown[][] {
  return spill(
    [
      sizeAndKind(wanted, "wanted"),
      rating(within, "within", "ratio", 0.01),
      count(parts, "parts", 4),
      count(list, "list", 1),
      rating(watts, "watts", "watt", null),
      rating(volts, "volts", "volt", null),
      amount(price, "price", null),
      choice(prefer, "prefer", PREFERENCES, "fewest"),
      choice(kind, "kind", KINDS, null),
    ],
    (sized, within, mostParts, list, watts, volts, mostPrice, first, asked) =>
      core.madeUpRows({
        kind: kindOf(sized, asked),
        wanted: sized.value,
        window: { min: sized.value * (1 - within), max: sized.value * (1 + within) },
        stock: stockIn(stock ?? "E24", sized.value),
        mostParts: Math.min(mostParts, 4),
        list,
        watts,
        volts,
        mostPrice,
        first,
      }),
  );
}

/** The kind said, or told by the unit; of a bare number, what is usual: farads are small, ohms are not. */
function kindOf({ value, kind }: Sized, asked: core.Kind | null): core.Kind {
  return asked ?? kind ?? (value < 0.1 ? "capacitor" : "resistor");
}
