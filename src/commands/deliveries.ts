import {
  emptyRow,
  OFFERS_SHEET,
  ON_HAND_SHEET,
  type OnHandRow,
  type ORDER_STATES,
  type OrderRow,
  readForWhom,
} from "../core/index.js";
import type { Change } from "../hosts/host.js";
import type { Book } from "./book.js";
import { cameFor, cameOf, hadByPart, piecesOf } from "./had.js";
import type { ViewRow } from "./openSheet.js";
import { OWN } from "./orderBook.js";
import { counted, nothingToDo, type Step } from "./step.js";
import { addRows, patchRows, writtenRow } from "./writeSheet.js";

type OrderState = (typeof ORDER_STATES)[number];
type OrderLine = ViewRow<NonNullable<Book["order"]>["sheet"]>;

/** What became of a line of Order: its state, and how many pieces are in the house. */
export type Delivery = { readonly state: OrderState; readonly came?: number | null };

/**
 * Notes what became of a line of Order, part deliveries included; what came is noted at the parts it is for.
 *
 * "came" without a count is all of it; "on the way" with one is a part of it, the rest still to come; of "short" the rest
 * does not come and is wanted again. What is taken from one's own drawers is taken off there.
 */
export function deliveryStep(book: Book, at: number, { state, came = null }: Delivery): Step {
  const { order } = book;
  const row = order?.rows.find((each) => each.at === at);
  if (!order || !row) return nothingToDo("No such line");
  const all = piecesOf(row.values);
  const pieces =
    state === "to order" ? 0 : Math.min(all, Math.max(0, came ?? (state === "came" ? all : cameOf(row.values))));
  const cells = { state, came: pieces > 0 ? pieces : "" } as const;
  const after = { ...row, values: { ...row.values, state, came: pieces > 0 ? pieces : null } };
  const name = row.values.stockNumber ?? row.values.description;
  return {
    name: `${name}: ${state}${pieces > 0 && pieces < all ? `, ${pieces} of ${all} here` : ""}`,
    changes: [
      ...patchRows(order, [{ at, cells }]),
      ...cameChanges(book, after),
      ...drawerChanges(book, row.values, cameOf(after.values) - cameOf(row.values)),
    ],
    overwrites: [],
    notes: [],
  };
}

/** The parts that a line is for, with what they have by then. */
function cameChanges(book: Book, line: OrderLine): readonly Change[] {
  const { order, parts } = book;
  if (!order || !parts) return [];
  const rows = order.rows.map((each) => (each.at === line.at ? line : each));
  const [before, had] = [hadByPart(book), hadByPart({ ...book, order: { ...order, rows } })];
  const ids = new Set(readForWhom(line.values.forWhom).map(({ part }) => part));
  const here = parts.rows.filter(({ values }) => ids.has(values.id ?? ""));
  return patchRows(
    parts,
    here.map(({ at, values: { id, came } }) => {
      const more = cameFor(had.get(id ?? "")) - cameFor(before.get(id ?? ""));
      return { at, cells: { came: Math.max(0, (came ?? 0) + more) || "" } };
    }),
  );
}

/** Pieces taken from one's own drawers, off the count that stands there. */
function drawerChanges(book: Book, { vendor, stockNumber, description }: OrderRow, taken: number): readonly Change[] {
  const drawer = book.onHand?.rows.find(
    ({ values }) =>
      (values.vendor ?? OWN) === vendor && values.stockNumber === stockNumber && values.description === description,
  );
  if (!book.onHand || !drawer || drawer.values.stock === null || taken === 0) return [];
  const stock = Math.max(0, drawer.values.stock - Math.round(taken / (drawer.values.pack ?? 1)));
  return patchRows(book.onHand, [{ at: drawer.at, cells: { stock } }]);
}

/** How many pieces of a line that came no part asked for, and that were not put in stock yet. */
export const sparesHere = (line: OrderRow): number =>
  Math.max(
    0,
    cameOf(line) - readForWhom(line.forWhom).reduce((sum, { pieces }) => sum + pieces, 0) - (line.stocked ?? 0),
  );

/** Whether a line takes from one's own drawers. */
export const isOwn = (book: Book, line: OrderRow): boolean =>
  (book.onHand?.rows ?? []).some(({ values }) => (values.vendor ?? OWN) === line.vendor);

/** Puts the spares that came into On hand, where the next plan finds them first. */
export function stockSparesStep(book: Book): Step {
  const { order } = book;
  const lines = (order?.rows ?? []).filter(({ values }) => !isOwn(book, values) && sparesHere(values) > 0);
  if (!order || lines.length === 0) return nothingToDo("No spares have come");
  const pieces = lines.reduce((sum, { values }) => sum + sparesHere(values), 0);
  const known = lines.flatMap((line) => {
    const drawer = drawerOf(book, line.values);
    return drawer ? [{ at: drawer.at, cells: { stock: (drawer.values.stock ?? 0) + sparesHere(line.values) } }] : [];
  });
  const fresh = lines.filter(({ values }) => !drawerOf(book, values)).map(({ values }) => drawerRow(book, values));
  const stocked = lines.map(({ at, values }) => ({
    at,
    cells: { stocked: (values.stocked ?? 0) + sparesHere(values) },
  }));
  return {
    name: `Put ${counted(pieces, "spare piece")} in On hand`,
    changes: [
      ...(book.onHand ? patchRows(book.onHand, known) : []),
      ...(fresh.length > 0
        ? addRows(
            book.onHand,
            ON_HAND_SHEET,
            fresh.map((row) => writtenRow(ON_HAND_SHEET, row)),
          )
        : []),
      ...patchRows(order, stocked),
    ],
    overwrites: [],
    notes: [],
  };
}

/** The drawer that holds the same offer from an earlier order. */
const drawerOf = (book: Book, line: OrderRow) =>
  book.onHand?.rows.find(
    ({ values }) =>
      values.stockNumber === line.stockNumber && values.description === line.description && (values.pack ?? 1) === 1,
  );

/** A drawer for spares of an offer: all that its vendor's list says of the part, by the piece and for nothing. */
function drawerRow(book: Book, line: OrderRow): OnHandRow {
  const offer = (book.offers?.rows ?? []).find(
    ({ values }) =>
      values.vendor === line.vendor &&
      values.stockNumber === line.stockNumber &&
      values.description === line.description,
  );
  const { change: _, ...known } = offer?.values ?? EMPTY_OFFER;
  return {
    ...known,
    ...{ vendor: null, stockNumber: line.stockNumber, description: line.description, stock: sparesHere(line), pack: 1 },
    ...{ minimum: null, multiple: null, prices: null, currency: null, status: null, row: null },
  };
}

const EMPTY_OFFER = emptyRow(OFFERS_SHEET);
