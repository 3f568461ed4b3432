import type { Span } from "../part.js";
import { PartsError } from "../problem.js";
import type { Form, Joins } from "./forms.js";
import { areToBeHad, holds, SLACK } from "./meets.js";
import { mapNetwork, type Network, opposition, oppositionOf } from "./network.js";
import { sharesBy } from "./shares.js";
import { type Shortlist, shortlist } from "./shortlist.js";
import { narrow, type Sides, sidesOf } from "./sides.js";
import type { StockPart } from "./stock.js";
import { usableStock } from "./usableStock.js";
import type { Wants } from "./wants.js";

/** Stock of this size makes 0.7 million pairs; more would not fit a cell's patience. */
const MOST_FOR_FOUR = 1_200;
const MOST = 10_000;
/** So many networks of a good value that fail a rating are looked at before the search gives up: about 0.2 s. */
const PATIENCE = 30_000;
/** Nearer than this is met exactly, for that is what arithmetic leaves. */
const EXACT = 1e-12;

/** What a search looks at, for what, and what it found so far. */
export type Lookout = {
  readonly wants: Wants;
  readonly parts: readonly StockPart[];
  readonly oppositions: Float64Array;
  readonly sides: Sides;
  /** What the network's opposition may be, and should be; see `opposition`. */
  readonly window: Span;
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
  const window = nominalWindow(parts, wants);
  const oppositions = Float64Array.from(parts, (part) => opposition(part.value, wants.kind));
  return {
    wants,
    parts,
    oppositions,
    sides: sidesOf(parts, oppositions, wants, window),
    window,
    aim: opposition(wants.wanted, wants.kind),
    list: shortlist(wants.list ?? 1, wants.first ?? "fewest"),
    refused: 0,
  };
}

/** Takes the network of these places into the list if it comes near enough and meets the wants. */
export function consider(look: Lookout, joins: Joins, form: Form, places: readonly number[]): void {
  const { wants, parts, list, aim, window, oppositions } = look;
  const network = form(joins, places);
  const total = oppositionOf(network, (place) => oppositions[place]!);
  const off = Math.abs(Math.log(total / aim));
  if (off > list.reach() + EXACT || total < window.min || total > window.max) return;
  const used = places.map((place) => parts[place]!);
  const withParts = () => mapNetwork(network, (place) => parts[place]!);
  if (!areToBeHad(used, wants)) refuse(look, 0.02);
  else if (!holds(withParts(), wants)) refuse(look, 1);
  else {
    list.add({
      network: withParts(),
      distance: off < EXACT ? 0 : off,
      parts: used.length,
      price: used.reduce((sum, part) => sum + (part.price ?? Number.POSITIVE_INFINITY), 0),
      hardest: Math.max(...sharesBy(network, (place) => oppositions[place]!).map(({ power }) => rounded(power))),
      key: keyOf(network),
    });
    narrow(look.sides, aim, window, list.reach());
  }
}

/** Without the last digits, in which equal shares differ by arithmetic alone. */
const rounded = (ratio: number) => Number(ratio.toFixed(12));

/** Counts what a refused network cost in time; when patience is at its end nothing is looked for any more. */
function refuse(look: Lookout, cost: number): void {
  look.refused += cost;
  if (isBrokenOff(look)) narrow(look.sides, look.aim, look.window, Number.NEGATIVE_INFINITY);
}

/** Whether more looking can change nothing: enough found with so few parts, or patience is at its end. */
export function isSettled(look: Lookout): boolean {
  const isFull = look.list.best.length >= (look.wants.list ?? 1);
  return isBrokenOff(look) || (isFull && (look.wants.first ?? "fewest") === "fewest");
}

/** Whether the search gave up over networks that ratings or prices forbid. */
export function isBrokenOff(look: Lookout): boolean {
  return look.refused >= PATIENCE;
}

/** What the printed values may come to, as an opposition, if even the closest tolerance in stock is to stay within. */
function nominalWindow(parts: readonly StockPart[], { window, kind }: Wants): Span {
  const least = (side: "minus" | "plus") => Math.min(1, ...parts.map((part) => part.tolerance?.[side] ?? 0));
  const ends = [window.min / (1 - least("minus")), window.max / (1 + least("plus"))].map((end) =>
    opposition(end, kind),
  );
  return { min: Math.min(...ends) * (1 - 2 * SLACK), max: Math.max(...ends) * (1 + 2 * SLACK) };
}

/** The same text for networks that differ in the order of their parts only. */
function keyOf(network: Network): string {
  if ("part" in network) return String(network.part);
  const inner = "series" in network ? network.series : network.parallel;
  return `(${inner
    .map(keyOf)
    .sort()
    .join("series" in network ? "+" : "|")})`;
}
