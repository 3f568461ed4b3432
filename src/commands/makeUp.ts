import {
  attempt,
  isToBeHad,
  limitsOfRow,
  type MadeUpFromOffers,
  makeUpFromOffers,
  type Offer,
  withValues,
  writeNetwork,
} from "../core/index.js";
import { type Book, rulesOf } from "./book.js";
import { isTheirs } from "./fill.js";
import type { ViewRow } from "./openSheet.js";
import { BETWEEN_OFFERS, type Wants } from "./orderBook.js";
import { nothingToDo, type Overwrite, type Step } from "./step.js";
import { patchRows } from "./writeSheet.js";

type PartRow = ViewRow<NonNullable<Book["parts"]>["sheet"]>;

/** A value made up from offers: as it is written, what it comes to, and the offers with the pieces of each. */
export type Composition = {
  readonly text: string;
  readonly off: number;
  readonly pieces: readonly { readonly offer: Offer; readonly count: number }[];
  readonly found: MadeUpFromOffers;
};

/**
 * Up to three ways to make up what a row wants from offers that are to be had; none where no network of four parts does.
 *
 * Takes up to about 0.3 s a row: ask where the user asks.
 */
export function compositionsFor(book: Book, row: PartRow, { offers }: Wants): readonly Composition[] {
  return attempt(
    () => {
      const ratings = limitsOfRow(row.values, rulesOf(book, row.values.project));
      return makeUpFromOffers(ratings, offers.filter(isToBeHad)).map((found) => ({
        text: writeNetwork(withValues(found.madeUp.network), ratings.kind),
        off: found.madeUp.off,
        pieces: tallied(found.offers),
        found,
      }));
    },
    () => [],
  );
}

/** How often each offer is among them. */
function tallied(offers: readonly Offer[]) {
  const counts = new Map<Offer, number>();
  for (const offer of offers) counts.set(offer, (counts.get(offer) ?? 0) + 1);
  return [...counts].map(([offer, count]) => ({ offer, count }));
}

/** What to look at where capacitors stand in series: at d.c. their leakage divides the volts, not their capacitance. */
const EVEN_OUT = "in series their d.c. volts divide by leakage: a resistor across each keeps them even";

const isSeriesOfCapacitors = ({ text, found }: Composition): boolean =>
  text.includes("+") && found.offers.some(({ kind }) => kind === "capacitor");

/** A composition in one sentence. @example "2 of Corwen CW-1179, together 0.3 % above; needs room for 2 bodies" */
export function compositionText(composition: Composition): string {
  const { pieces, off, found } = composition;
  const named = pieces.map(({ offer, count }) => `${count} of ${offer.id}`).join(" and ");
  const percent = Number(Math.abs(off * 100).toPrecision(2));
  const far =
    percent < 0.01 ? "exactly the value" : `together ${percent} % ${off > 0 ? "above" : "below"} the value wanted`;
  return `${named}, ${far}; needs room for ${found.offers.length} bodies${isSeriesOfCapacitors(composition) ? `; ${EVEN_OUT}` : ""}`;
}

/**
 * Takes a composition for a row: its new value becomes the text of the network, its offer the offer of each piece. Both are
 * the user's from then on, and buying asks for each piece.
 */
export function takeCompositionStep(book: Book, row: PartRow, composition: Composition): Step {
  const { text, found } = composition;
  const { parts } = book;
  if (!parts) return nothingToDo("There are no parts yet");
  const offer = found.offers.map(({ id }) => id).join(BETWEEN_OFFERS);
  const quantity = found.offers.length * (row.values.perSet ?? 1);
  const cells = { newValue: text, offer, quantity, fit: `made up: ${compositionText(composition)}`, restsOn: "" };
  const overwrites = (["newValue", "offer"] as const).flatMap((key): readonly Overwrite[] => {
    const was = String(row.values[key] ?? "");
    if (!isTheirs(row, key) || was === cells[key]) return [];
    const place = { sheet: parts.name, row: row.at, column: parts.places[key] ?? 0 };
    return [{ place, row: row.values.designator ?? "", head: parts.sheet.columns[key].head, was, will: cells[key] }];
  });
  return {
    name: `Make ${row.values.designator ?? row.values.id} up as ${text}`,
    changes: patchRows(parts, [{ at: row.at, cells }]),
    overwrites,
    notes: [],
  };
}
