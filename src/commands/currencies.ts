import { CURRENCIES_SHEET, type Offer } from "../core/index.js";
import type { Change } from "../hosts/host.js";
import { type Book, valuesOf } from "./book.js";
import { nothingToDo, type Step } from "./step.js";
import { addRows, patchRows } from "./writeSheet.js";

/** The name under which prices stand whose currency nobody stated. */
const UNSTATED = "";

/**
 * What money is worth: the user's own currency (null: not known yet), the rate of each, and what still has to be asked.
 *
 * Where all prices are in one currency that is the user's. `noRate` are currencies without a rate, `noCurrency` vendors
 * whose prices have none while others' do.
 */
export type Money = {
  readonly own: string | null;
  readonly rateOf: (currency: string | null) => number | null;
  readonly currencyOf: (vendor: string) => string | null;
  readonly all: readonly string[];
  readonly noRate: readonly string[];
  readonly noCurrency: readonly string[];
};

/** The money of the vendors' prices in play; what costs nothing has no currency. */
export function moneyOf(book: Book, offers: readonly Offer[]): Money {
  const priced = offers.filter(({ breaks }) => breaks.some(([, price]) => price > 0));
  const currencyOf = vendorCurrencies(book, priced);
  const met = new Set(
    priced.flatMap(({ vendor, currency }) => [
      currencyOf(vendor) ?? UNSTATED,
      currency ?? currencyOf(vendor) ?? UNSTATED,
    ]),
  );
  const rows = valuesOf(book.currencies).filter(({ currency }) => currency !== null);
  const rates = new Map(rows.map(({ currency, rate }) => [currency, rate]));
  const said = rows.find(({ rate }) => rate === 1)?.currency ?? null;
  const single = met.size === 1 ? [...met][0]! : null;
  const own = said ?? (single === UNSTATED ? null : single);
  const rateOf = (currency: string | null) => {
    if ((currency ?? UNSTATED) === single && (said === null || currency === said)) return 1;
    return currency === null ? null : currency === own ? 1 : (rates.get(currency) ?? null);
  };
  const all = [...met].filter((currency) => currency !== UNSTATED).sort();
  const vendors = [...new Set(priced.map(({ vendor }) => vendor))];
  return {
    ...{ own, rateOf, currencyOf, all },
    noRate: all.filter((currency) => rateOf(currency) === null),
    noCurrency: vendors.filter((vendor) => currencyOf(vendor) === null && rateOf(null) === null),
  };
}

/** The currency of a vendor's terms and prices: as its row says, else the one that all its offers print. */
function vendorCurrencies(book: Book, offers: readonly Offer[]): (vendor: string) => string | null {
  const rows = new Map(valuesOf(book.vendors).map(({ vendor, currency }) => [vendor, currency]));
  const printed = new Map<string, Set<string>>();
  for (const { vendor, currency } of offers)
    if (currency) printed.set(vendor, (printed.get(vendor) ?? new Set()).add(currency));
  return (vendor) => {
    const [one, ...more] = printed.get(vendor) ?? [];
    return rows.get(vendor) ?? (more.length === 0 ? (one ?? null) : null);
  };
}

/** What turns an offer's prices into its vendor's currency; null where a rate is missing. */
export function priceFactor({ rateOf, currencyOf }: Money, { vendor, currency, breaks }: Offer): number | null {
  if (!breaks.some(([, price]) => price > 0)) return 1;
  const [own, theirs] = [rateOf(currency ?? currencyOf(vendor)), rateOf(currencyOf(vendor))];
  if (own === null || theirs === null) return null;
  return own === theirs ? 1 : own / theirs;
}

/** Which offers of which vendors can't be weighed yet, and what would mend it; one sentence each. */
export function moneyMissing({ own, noRate, noCurrency, all }: Money): readonly string[] {
  const choose = own === null && all.length > 1 ? [`Prices are in ${all.join(" and ")}: say which is yours.`] : [];
  const rates =
    own === null ? [] : noRate.map((code) => `No rate for ${code} yet: its offers are left out of the plan.`);
  const vendors = noCurrency.map((vendor) => `${vendor} states no currency: its offers are left out of the plan.`);
  return [...choose, ...rates, ...vendors];
}

/**
 * Keeps what a currency is worth in the user's own; a rate of 1 makes it the user's own.
 *
 * @param asOf The day of the rate.
 */
export function rateStep(book: Book, currency: string, rate: number, asOf: string): Step {
  if (!(rate > 0) || !Number.isFinite(rate)) return nothingToDo(`Give a rate above 0 for ${currency}`);
  const { currencies: view } = book;
  const there = view?.rows.find(({ values }) => values.currency === currency);
  const others = rate === 1 ? rebased(book, currency, there?.values.rate ?? null) : [];
  const cells = { currency, rate, asOf };
  const changes: readonly Change[] =
    view && there
      ? patchRows(view, [...others, { at: there.at, cells }])
      : [...(view ? patchRows(view, others) : []), ...addRows(view, CURRENCIES_SHEET, [cells])];
  const name = rate === 1 ? `Count in ${currency}` : `Keep 1 ${currency} = ${rate}`;
  return { name, changes, overwrites: [], notes: [] };
}

/** The other currencies once another one is the user's own: in it, or emptied where what it was worth was not known. */
function rebased(book: Book, own: string, was: number | null) {
  const others = (book.currencies?.rows ?? []).filter(({ values }) => values.currency !== own && values.rate !== null);
  return others.map(({ at, values }) => ({
    at,
    cells: { rate: was === null ? "" : Number((values.rate! / was).toPrecision(6)) },
  }));
}

/** Says in which currency a vendor's prices are. */
export function vendorCurrencyStep(book: Book, vendor: string, currency: string): Step {
  const row = book.vendors?.rows.find(({ values }) => values.vendor === vendor);
  const code = currency.trim().toUpperCase();
  if (!book.vendors || !row || !/^[A-Z]{3}$/.test(code))
    return nothingToDo("Give a code of three letters, such as EUR");
  const changes = patchRows(book.vendors, [{ at: row.at, cells: { currency: code } }]);
  return { name: `${vendor} sells in ${code}`, changes, overwrites: [], notes: [] };
}
