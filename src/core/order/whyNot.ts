import type { Basket, BasketLine } from "../plan.js";
import type { Milp } from "./milp.js";
import { type BasketModel, modelOf } from "./model.js";
import { type Scope, scopeOf } from "./scope.js";
import { tiersOf } from "./units.js";

/** The lines that can't be served whatever else is bought, one sentence each. */
export function shortLines(basket: Basket): readonly string[] {
  const scope = scopeOf(basket);
  return basket.lines.flatMap((line) => shortLine(basket, scope, line));
}

function shortLine(basket: Basket, scope: Scope, line: BasketLine): string[] {
  const offers = scope.byLine.get(line.id)!.map(({ offer }) => ({ id: offer.id, most: mostOf(offer) }));
  if (offers.length === 0) return [`${line.id}: ${nothing(basket, line)}`];
  const listed = offers.map(({ id, most }) => `${id} ${most}`).join(", ");
  const most = Math.max(...offers.map((offer) => offer.most));
  if (line.single && most < line.pieces)
    return [`${line.id} wants ${line.pieces} pieces from one offer; the most one has is ${most} (${listed}).`];
  const all = offers.reduce((sum, offer) => sum + offer.most, 0);
  return all < line.pieces ? [`${line.id} wants ${line.pieces} pieces; only ${all} can be had (${listed}).`] : [];
}

const mostOf = (offer: Parameters<typeof tiersOf>[0] & { readonly pack: number }) =>
  (tiersOf(offer).at(-1)?.most ?? 0) * offer.pack;

function nothing({ offers, options }: Basket, { fits }: BasketLine): string {
  const fitting = offers.filter(({ id }) => fits.includes(id));
  if (fitting.length === 0) return "no offer fits.";
  const excluded = fitting.filter(({ vendor }) => options.excluded.includes(vendor));
  const names = (list: typeof fitting) => list.map(({ id }) => id).join(", ");
  if (excluded.length === fitting.length) return `only vendors that are left out have it (${names(excluded)}).`;
  return `${names(fitting)} can't be bought: stock, minimum and multiple leave no number of units.`;
}

/** The basket's model with room for missing pieces, whose least cost is the number of pieces that can't be had. */
export type ShortageModel = { readonly milp: Milp; readonly missing: ReadonlyMap<string, number> };

/** A model that always has a solution where vendors take the order: costs are gone, each line may miss pieces at 1 a piece. */
export function shortageModelOf(basket: Basket, model: BasketModel = modelOf(basket)): ShortageModel {
  const columns = model.milp.columns.map((column) => ({ ...column, cost: 0 }));
  const rows = [...model.milp.rows];
  const missing = new Map<string, number>();
  for (const { id, single, pieces } of basket.lines) {
    const column =
      columns.push({ cost: single ? pieces : 1, lower: 0, upper: single ? 1 : pieces, integer: single }) - 1;
    const at = model.lineRows.get(id)!;
    rows[at] = { ...rows[at]!, terms: [...rows[at]!.terms, [column, single ? pieces : 1]] };
    missing.set(id, column);
  }
  return { milp: { columns, rows }, missing };
}

/** The lines that miss pieces in a solution of the shortage model, one sentence each. */
export function shortagesOf(basket: Basket, { missing }: ShortageModel, values: ArrayLike<number>): readonly string[] {
  const { maxVendors } = basket.options;
  const limit = maxVendors === null ? "" : ` from ${maxVendors} vendors at most`;
  return basket.lines.flatMap(({ id, single, pieces, fits }) => {
    const short = Math.round(values[missing.get(id)!]! * (single ? pieces : 1));
    if (short === 0) return [];
    const rivals = basket.lines.filter((line) => line.id !== id && line.fits.some((offer) => fits.includes(offer)));
    const shared = rivals.length > 0 ? `; ${rivals.map((line) => line.id).join(", ")} want the same offers` : "";
    return [`${id} misses ${short} of ${pieces} pieces${limit}${shared}.`];
  });
}
