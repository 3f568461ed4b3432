import { type DemandLine, headsOf, type Match, PARTS_SHEET, readFrom, writeFrom } from "../core/index.js";
import type { Book } from "./book.js";
import { isTheirs } from "./fill.js";
import type { ViewRow } from "./openSheet.js";
import { BETWEEN_OFFERS, type Wants, wantsOf } from "./orderBook.js";
import { counted, nothingToDo, type Step } from "./step.js";
import { patchRows, type RowCells } from "./writeSheet.js";

type Parts = typeof PARTS_SHEET;

const HEAD = PARTS_SHEET.columns.offer.head;

/** A `from` cell that says we wrote this offer. */
function fromWithOffer(from: string | null, offer: string): string {
  const others = readFrom(from, headsOf(PARTS_SHEET)).filter(({ head }) => head !== HEAD);
  return writeFrom([...others, { head: HEAD, text: offer, from: "default", at: "matched" }]);
}

/** What a match says of how it fits, in a few words. */
const fitText = (match: Match): string => match.notes.map(({ text }) => text).join("; ") || "fits";

/** Short text that changes when what a match rests on changes: limits, offer, price. */
function restsOn(line: DemandLine, match: Match): string {
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
  const patches = offerPatches(parts.rows, found, (line) => line.matches[0]);
  const without = wants.lines.length - found.length;
  return {
    name: `Find offers for ${counted(wants.demands.length, "part")}`,
    changes: patchRows(parts, patches),
    overwrites: [],
    notes:
      without > 0
        ? [`Nothing fits ${counted(without, "line")}: Vendors says what stands in the way, and makes up what can be.`]
        : [],
  };
}

/** The lines that serve a row of Parts: one, or one for each piece of a made-up value. */
function linesOf(lines: readonly DemandLine[], row: ViewRow<Parts>): readonly DemandLine[] {
  return lines.filter(({ demands }) => demands.some(({ part }) => part === row.values.id));
}

/** What is written at each row that some lines serve: the offer chosen for each of them. Offers that the user picked stay. */
export function offerPatches(
  rows: readonly ViewRow<Parts>[],
  lines: readonly DemandLine[],
  choose: (line: DemandLine) => Match | undefined,
): { readonly at: number; readonly cells: RowCells<Parts> }[] {
  return rows.flatMap((row) => {
    const chosen = linesOf(lines, row).flatMap((line) => {
      const match = choose(line);
      return match ? [{ line, match }] : [];
    });
    if (chosen.length === 0 || isTheirs(row, "offer")) return [];
    return [{ at: row.at, cells: matchCells(row, chosen) }];
  });
}

/** How many pieces of a line are for one part. */
const piecesFor = ({ demands }: DemandLine, part: string | null): number =>
  demands.filter((demand) => demand.part === part).reduce((sum, { pieces }) => sum + pieces, 0);

type Chosen = { readonly line: DemandLine; readonly match: Match };

function matchCells(row: ViewRow<Parts>, chosen: readonly Chosen[]): RowCells<Parts> {
  const offer = chosen.map(({ match }) => match.offer.id).join(BETWEEN_OFFERS);
  return {
    offer,
    fit: [...new Set(chosen.map(({ match }) => fitText(match)))].join("; "),
    restsOn: chosen.map(({ line, match }) => restsOn(line, match)).join(BETWEEN_OFFERS),
    quantity: Math.max(
      row.values.quantity ?? 0,
      chosen.reduce((sum, { line }) => sum + piecesFor(line, row.values.id), 0),
    ),
    from: fromWithOffer(row.values.from, offer),
  };
}

/** Parts whose offers no longer rest on what they were found by: ratings, rules or offers have changed since. */
export function staleMatches(book: Book, wants: Wants): readonly ViewRow<Parts>[] {
  const found = wants.lines.filter((line) => line.matches.length > 0);
  return (book.parts?.rows ?? []).filter((row) => {
    const { offer, restsOn: written } = row.values;
    const lines = linesOf(wants.lines, row);
    if (offer === null || written === null || lines.length === 0) return false;
    const ids = offer.split(BETWEEN_OFFERS);
    const now = linesOf(found, row).map((line) => {
      const match = line.matches.find((each) => ids.includes(each.offer.id));
      return match ? restsOn(line, match) : "gone";
    });
    return now.join(BETWEEN_OFFERS) !== written;
  });
}
