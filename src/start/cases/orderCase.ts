import { type BasketOffer, cheapestUnits } from "../../core/index.js";
import type { Answer } from "./answer.js";
import type { Case } from "./case.js";

/** A vendor as a case's context words it: prices, packs and shipping. */
type Told = { readonly offer: BasketOffer; readonly shipping: number };

const number = (text: string | undefined) => Number(text ?? 0);

/** Reads "A: 0.62 each, 0.48 from 10, ship 6.95" or "B: pack of 25 at 8.50, ship 4.50"; null for any other clause. */
function vendorTold(clause: string): Told | null {
  const [, vendor, terms = ""] = /^\s*(\w+): (.*)$/.exec(clause) ?? [];
  const pack = /pack of (\d+) at (\d*\.?\d+)/.exec(terms);
  const each = /(\d*\.?\d+) each/.exec(terms);
  if (!vendor || (!pack && !each)) return null;
  const from = [...terms.matchAll(/(\d*\.?\d+) from (\d+)/g)].map(
    ([, price, count]) => [number(count), number(price)] as const,
  );
  const offer = {
    id: vendor,
    vendor,
    pack: pack ? number(pack[1]) : 1,
    minimum: 1,
    multiple: 1,
    stock: null,
    breaks: pack ? [[1, number(pack[2])] as const] : [[1, number(each?.[1])] as const, ...from],
  };
  return { offer, shipping: number(/ship(?:ping)? (\d*\.?\d+)/.exec(terms)?.[1]) };
}

const cents = (amount: number) => Math.round(amount * 100) / 100;

/**
 * How many to order for several sets with spares, and from whom: alone, and where an order to that vendor goes out anyway.
 *
 * Nothing where a case gives no `need`.
 */
export function orderOf(one: Case): Answer {
  const { need, sparePct } = one.given ?? {};
  if (!Array.isArray(need)) return {};
  const sum = (need as number[]).reduce((total, each) => total + each, 0);
  const quantity = Math.ceil(sum * (1 + number(String(sparePct ?? 0)) / 100) - 1e-9);
  const vendors = (one.context ?? "").split(";").flatMap((clause) => vendorTold(clause) ?? []);
  const orders = vendors.flatMap(({ offer, shipping }) => {
    const bought = cheapestUnits(offer, quantity);
    if (!bought) return [];
    const goods = cents(bought.cost);
    return [
      {
        vendor: offer.vendor,
        pieces: bought.units * offer.pack,
        goods,
        alone: cents(goods + shipping),
        left: bought.units * offer.pack - quantity,
      },
    ];
  });
  const least = (by: "alone" | "goods") => [...orders].sort((a, b) => a[by] - b[by])[0]?.vendor ?? null;
  return { quantity, orders, pickAlone: least("alone"), pickIfOrdersExist: least("goods") };
}
