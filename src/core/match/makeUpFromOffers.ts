import { type MadeUp, makeUp } from "../compose/makeUp.js";
import type { StockPart } from "../compose/stock.js";
import type { Offer } from "../offer.js";
import { PartsError } from "../problem.js";
import type { Ratings } from "../ratings.js";
import { usualBodyVolts } from "../rules/bodyVolts.js";
import { checkSafety, checkSupply, checkTechnology, checkTemperature } from "./checkBuild.js";
import { fits } from "./judge.js";
import { piecePrice } from "./rank.js";
import { technologyRank } from "./technology.js";

/** A value made up from offers: the network, and the offer of each part in the order in which they are written. */
export type MadeUpFromOffers = { readonly madeUp: MadeUp; readonly offers: readonly Offer[] };

/** What a part of a network must be by itself; value, watts and volts are judged for the network as a whole. */
const EACH = [checkTechnology, checkSafety, checkTemperature, checkSupply];

/** So many different offers can be searched for networks of four parts, and so many for fewer (see `makeUp`). */
const MOST_FOR_FOUR = 1200;
const MOST_OFFERS = 10_000;

/**
 * Networks of up to four parts that make up a value from offers, where no single one fits; fewest parts first, then nearest.
 *
 * Every part is of the rule's technologies and can be had, bears its share of watts and volts, and by the strict gate the
 * whole stays within the old limits with every part at either end of its tolerance. Nothing is made up for a place that
 * demands a safety class, nor where the value does not matter.
 *
 * @param list How many networks to give; 3 when left out.
 */
export function makeUpFromOffers(ratings: Ratings, offers: readonly Offer[], list = 3): readonly MadeUpFromOffers[] {
  const { kind, wanted, window, old, gate, safety } = ratings;
  const limits = gate === "contained" ? (old ?? window) : window;
  if (wanted === null || limits === null || safety !== null || (kind !== "resistor" && kind !== "capacitor")) return [];
  const offerOf = new Map(usable(ratings, offers).map((offer) => [stockPart(ratings, offer), offer]));
  const stock = [...offerOf.keys()].slice(0, MOST_OFFERS);
  const { found } = makeUp({
    ...{ kind, wanted, window: limits, stock, list, leastParts: 2 },
    ...{ watts: ratings.leastWatts, volts: ratings.leastVolts },
    mostParts: stock.length > MOST_FOR_FOUR ? 3 : 4,
  });
  return found.map((madeUp) => ({ madeUp, offers: madeUp.parts.map((part) => known(offerOf, part)) }));
}

/** The offers that a network may use; one of several alike in value and ratings: the cheapest. */
function usable(ratings: Ratings, offers: readonly Offer[]): Offer[] {
  const cheapest = new Map<string, Offer>();
  for (const offer of offers) {
    if (offer.kind !== ratings.kind || offer.value === null || isForDcOnly(ratings, offer)) continue;
    if (!fits(EACH.flatMap((check) => check(ratings, offer, 1)))) continue;
    const key = JSON.stringify([offer.value, offer.watts, offer.volts, offer.tolerance]);
    const rival = cheapest.get(key);
    if (!rival || piecePrice(offer, 1) < piecePrice(rival, 1)) cheapest.set(key, offer);
  }
  return [...cheapest.values()];
}

/** A d.c. rating never serves an a.c. place, alone or as one of several. */
const isForDcOnly = ({ kind, voltsKind, leastVolts }: Ratings, offer: Offer): boolean =>
  kind === "capacitor" && voltsKind === "ac" && leastVolts !== null && offer.voltsKind !== "ac";

function stockPart(ratings: Ratings, offer: Offer): StockPart {
  const technology = ratings.technologies[technologyRank(ratings, offer) ?? -1];
  const usual = ratings.kind === "resistor" && technology ? usualBodyVolts(technology, offer.watts ?? 0) : null;
  const price = piecePrice(offer, 1);
  return {
    value: offer.value!,
    watts: offer.watts,
    volts: offer.volts ?? usual,
    tolerance: ratings.gate === "contained" ? offer.tolerance : null,
    price: Number.isFinite(price) ? price : null,
    pieces: offer.stock === null ? null : offer.stock * offer.pack,
  };
}

function known(offers: ReadonlyMap<StockPart, Offer>, part: StockPart): Offer {
  const offer = offers.get(part);
  if (offer) return offer;
  throw new PartsError("unknown-name", part.value, "A network is made of the offers given.");
}
