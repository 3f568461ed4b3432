import { type DemandLine, headsOf, type Match, PARTS_SHEET, readFrom, writeFrom } from "../core/index.js";
import type { Book } from "./book.js";
import { isTheirs } from "./fill.js";
import type { ViewRow } from "./openSheet.js";
import { type Wants, wantsOf } from "./orderBook.js";
import { counted, nothingToDo, type Step } from "./step.js";
import { patchRows, type RowCells } from "./writeSheet.js";

type Parts = typeof PARTS_SHEET;

const HEAD = PARTS_SHEET.columns.offer.head;

/** A `from` cell that says we wrote this offer. */
export function fromWithOffer(from: string | null, offer: string): string {
  const others = readFrom(from, headsOf(PARTS_SHEET)).filter(({ head }) => head !== HEAD);
  return writeFrom([...others, { head: HEAD, text: offer, from: "default", at: "matched" }]);
}

/** What a match says of how it fits, in a few words. */
export const fitText = (match: Match): string => match.notes.map(({ text }) => text).join("; ") || "fits";

/** Short text that changes when what a match rests on changes: limits, offer, price. */
export function restsOn(line: DemandLine, match: Match): string {
  const text = JSON.stringify([line.demands[0]!.ratings.aim?.text, line.demands[0]!.ratings, match.offer]);
  let sum = 0;
  for (let at = 0; at < text.length; at++) sum = (sum * 31 + text.charCodeAt(at)) >>> 0;
  return sum.toString(36);
}

/**
 * Finds the best offer for every part that is to be bought, and writes it with what is tight or over. Offers that the user
 * picked stay.
 */
export function matchStep(book: Book, wants: Wants = wantsOf(book)): Step {
  const { parts } = book;
  if (!parts || wants.lines.length === 0) return nothingToDo("No part is to be bought");
  if (wants.offers.length === 0) return nothingToDo("No offers yet");
  const found = wants.lines.filter((line) => line.matches.length > 0);
  const patches = found.flatMap((line) =>
    rowsOf(parts.rows, line)
      .filter((row) => !isTheirs(row, "offer"))
      .map((row) => ({ at: row.at, cells: matchCells(row, line, line.matches[0]!) })),
  );
  const without = wants.lines.length - found.length;
  return {
    name: `Find offers for ${counted(wants.demands.length, "part")}`,
    changes: patchRows(parts, patches),
    overwrites: [],
    notes: without > 0 ? [`Nothing fits ${counted(without, "line")}: see Vendors for what stands in the way.`] : [],
  };
}

/** The rows of Parts that a line serves. */
export function rowsOf(rows: readonly ViewRow<Parts>[], line: DemandLine): readonly ViewRow<Parts>[] {
  const ids = new Set(line.demands.map(({ part }) => part));
  return rows.filter(({ values }) => ids.has(values.id ?? ""));
}

/** The bought cells of a row for one match. */
export function matchCells(row: ViewRow<Parts>, line: DemandLine, match: Match): RowCells<Parts> {
  return {
    offer: match.offer.id,
    fit: fitText(match),
    restsOn: restsOn(line, match),
    quantity: row.values.perSet ?? 1,
    from: fromWithOffer(row.values.from, match.offer.id),
  };
}

/** Parts whose offer no longer rests on what it was found by: ratings, rules or offers have changed since. */
export function staleMatches(book: Book, wants: Wants): readonly ViewRow<Parts>[] {
  return wants.lines.flatMap((line) =>
    rowsOf(book.parts?.rows ?? [], line).filter(({ values }) => {
      const match = line.matches.find(({ offer }) => offer.id === values.offer);
      return values.offer !== null && values.restsOn !== null && (!match || restsOn(line, match) !== values.restsOn);
    }),
  );
}
