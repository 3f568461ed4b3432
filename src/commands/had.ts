import { type Demand, dealtOut, matchOffers, type Offer, type OrderRow, offerId, readForWhom } from "../core/index.js";
import { type Book, valuesOf } from "./book.js";

/** Pieces of an offer that one part has: come, or still on the way. */
export type Had = { readonly offer: string; readonly came: number; readonly onTheWay: number };

/** All pieces of a line of Order. */
export const piecesOf = ({ units, pack }: OrderRow): number => (units ?? 0) * (pack ?? 1);

/** How many pieces of a line of Order are in the house. */
export const cameOf = (line: OrderRow): number => line.came ?? (line.state === "came" ? piecesOf(line) : 0);

/** How many pieces of a line of Order are still to come: what is short, or came as another part, does not. */
export const stillToCome = (line: OrderRow): number =>
  line.state === "on the way" ? Math.max(0, piecesOf(line) - cameOf(line)) : 0;

/**
 * What parts have by the lines of Order, by the part's id. Pieces go to the parts in the order in which the line names them:
 * what came first, then what is on the way.
 */
export function hadByPart(book: Book): ReadonlyMap<string, readonly Had[]> {
  const had = new Map<string, Had[]>();
  for (const line of valuesOf(book.order)) {
    const shares = readForWhom(line.forWhom);
    const came = new Map(dealtOut(shares, cameOf(line)).map(({ part, pieces }) => [part, pieces]));
    for (const { part, pieces } of dealtOut(shares, cameOf(line) + stillToCome(line))) {
      const here = came.get(part) ?? 0;
      const one: Had = { offer: offerOfLine(line), came: here, onTheWay: pieces - here };
      had.set(part, [...(had.get(part) ?? []), one]);
    }
  }
  return had;
}

/** The id of the offer that a line of Order buys; one without a stock number is told by its description. */
export const offerOfLine = ({ vendor, stockNumber, description }: OrderRow): string =>
  stockNumber === null ? `${vendor ?? ""} ${description ?? ""}` : offerId(vendor ?? "", stockNumber, 0);

/** How many pieces a part has come, over all its lines of Order. */
export const cameFor = (had: readonly Had[] | undefined): number =>
  (had ?? []).reduce((sum, { came }) => sum + came, 0);

/**
 * What a part still wants of its demands, once what it has is taken off: pieces of offers that fit a demand from that one,
 * all others in turn.
 *
 * @param byHand Pieces in the house that no line of Order tells of.
 */
export function stillWanted(
  demands: readonly Demand[],
  had: readonly Had[],
  byHand: number,
  offers: readonly Offer[],
): readonly Demand[] {
  const left = demands.map(({ pieces }) => pieces);
  const take = (pieces: number, fits: (demand: Demand) => boolean): number =>
    demands.reduce((rest, demand, i) => {
      const taken = fits(demand) ? Math.min(rest, left[i]!) : 0;
      left[i]! -= taken;
      return rest - taken;
    }, pieces);
  const rest = had.map(({ offer: id, came, onTheWay }) => {
    const offer = offers.find((each) => each.id === id || `${each.vendor} ${each.description}` === id);
    const fits = ({ ratings, pick }: Demand) =>
      offer !== undefined && matchOffers(ratings, [offer], { pick }).matches.length > 0;
    return take(came + onTheWay, fits);
  });
  take(
    rest.reduce((sum, pieces) => sum + pieces, byHand),
    () => true,
  );
  return demands.flatMap((demand, i) => (left[i]! > 0 ? [{ ...demand, pieces: left[i]! }] : []));
}
