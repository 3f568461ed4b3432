import type { Span } from "../part.js";
import { PartsError } from "../problem.js";
import { type Borne, bear, wholeOf } from "./borne.js";
import { type Bounds, leavesEnough } from "./bounds.js";
import { type Form, type Join, networkFrom } from "./forms.js";
import { holds, SLACK } from "./meets.js";
import { mapNetwork, type Network, opposition } from "./network.js";
import { type Shortlist, shortlist } from "./shortlist.js";
import { narrow, type Sides, sidesOf } from "./sides.js";
import { alikeOf, type StockPart } from "./stock.js";
import { areToBeHad, priceOf, type Supply, supplyOf } from "./supply.js";
import { usableStock } from "./usableStock.js";
import type { Wants } from "./wants.js";

/** Stock of this size makes 0.7 million pairs; more would not fit a cell's patience. */
const MOST_FOR_FOUR = 1_200;
const MOST = 10_000;
/** So many networks of a good value that fail a rating are looked at before the search gives up: about 0.15 s. */
const PATIENCE = 120_000;
/** What a network costs of it that fails by its price, pieces or ratings added up, which is seen at once. */
const CHEAP = 0.03;
/** Nearer than this is met exactly, for that is what arithmetic leaves. */
const EXACT = 1e-12;

/** What a search looks at, for what, and what it found so far. */
export type Lookout = {
  readonly wants: Wants;
  readonly parts: readonly StockPart[];
  readonly alike: Int32Array;
  readonly sides: Sides;
  readonly supply: Supply;
  /** What the network's opposition may be, and should be, with its parts as printed; see `opposition`. */
  readonly nominal: Span;
  readonly aim: number;
  readonly list: Shortlist;
  refused: number;
};

/** A search that has not begun. */
export function lookout(wants: Wants): Lookout {
  const parts = usableStock(wants);
  const deep = (wants.mostParts ?? 4) > 3;
  const most = deep ? MOST_FOR_FOUR : MOST;
  if (parts.length > most) {
    throw new PartsError("too-much", `${parts.length} values`, `Give at most ${most}, or allow fewer parts.`, "stock");
  }
  const nominal = nominalWindow(parts, wants);
  return {
    wants,
    parts,
    alike: alikeOf(parts),
    sides: sidesOf(parts, wants, nominal),
    supply: supplyOf(parts, wants),
    nominal,
    aim: opposition(wants.wanted, wants.kind),
    list: shortlist(wants.list ?? 1, wants.first ?? "fewest"),
    refused: 0,
  };
}

/** Takes the network of these places into the list if it comes near enough and meets the wants. */
export function consider(look: Lookout, bounds: Bounds, outer: Join, form: Form, places: readonly number[]): void {
  const { list, aim, nominal } = look;
  const { test, limits } = look.sides[outer];
  if (!leavesEnough(bounds, places) || !areToBeHad(look.supply, places)) {
    refuse(look, CHEAP);
    return;
  }
  const numbers = places.map((place) => test.numbers[place]!);
  const whole = wholeOf(form, numbers);
  if (whole < limits.low * (1 - EXACT) || whole > limits.high * (1 + EXACT)) return;
  const off = Math.abs(Math.log(outer === "series" ? whole / aim : whole * aim));
  if (off > list.reach() + EXACT) return;
  if (!holds(test, form, places)) {
    refuse(look, 1);
    return;
  }
  const network = () => mapNetwork(networkFrom(form, outer, places), (place) => look.parts[place]!);
  list.add({
    network,
    distance: off < EXACT ? 0 : off,
    parts: places.length,
    price: priceOf(look.supply, places),
    hardest: hardest(form, numbers),
    key: () => keyOf(networkFrom(form, outer, places), look.alike),
  });
  narrow(look.sides, aim, nominal, list.reach());
}

/** The largest share of the power, without the last digits, in which equal shares differ by arithmetic alone. */
function hardest(form: Form, numbers: readonly number[]): number {
  const borne: Borne = { added: [], through: [] };
  bear(form, numbers, borne);
  return Math.max(...borne.added.map((added, i) => Math.round(added * borne.through[i]! * 1e12) / 1e12));
}

/** Counts what a refused network cost in time; when patience is at its end nothing is looked for any more. */
function refuse(look: Lookout, cost: number): void {
  look.refused += cost;
  if (isBrokenOff(look)) narrow(look.sides, look.aim, look.nominal, Number.NEGATIVE_INFINITY);
}

/** Whether more looking can change nothing: too wide tolerances, enough found with so few parts, or no patience left. */
export function isSettled(look: Lookout): boolean {
  const isFull = look.list.best.length >= (look.wants.list ?? 1);
  const { min, max } = look.nominal;
  return min > max || isBrokenOff(look) || (isFull && (look.wants.first ?? "fewest") === "fewest");
}

/** Whether the search gave up over networks that ratings or prices forbid. */
export function isBrokenOff(look: Lookout): boolean {
  return look.refused >= PATIENCE;
}

/**
 * What the printed values may come to, as an opposition, if even the closest tolerance in stock is to stay within; the
 * least is above the most where that can't be.
 */
function nominalWindow(parts: readonly StockPart[], { window, kind }: Wants): Span {
  const closest = (side: "minus" | "plus") => Math.min(1, ...parts.map((part) => part.tolerance?.[side] ?? 0));
  const least = (window.min / (1 - closest("minus"))) * (1 - 2 * SLACK);
  const most = (window.max / (1 + closest("plus"))) * (1 + 2 * SLACK);
  return kind === "capacitor"
    ? { min: opposition(most, kind), max: opposition(least, kind) }
    : { min: least, max: most };
}

/** The same text for networks that differ in the order of their parts only, or in which of several alike they take. */
function keyOf(network: Network, alike: Int32Array): string {
  if ("part" in network) return String(alike[network.part]);
  const inner = "series" in network ? network.series : network.parallel;
  return `(${inner
    .map((one) => keyOf(one, alike))
    .sort()
    .join("series" in network ? "+" : "|")})`;
}
