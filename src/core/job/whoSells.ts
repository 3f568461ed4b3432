import { type Match, matchOffers } from "../match/matchOffers.js";
import type { Offer } from "../offer.js";
import type { Kind } from "../part.js";
import { offerOfRow } from "../present/offerRow.js";
import { rowsOf } from "../present/sheet.js";
import { OFFERS_SHEET } from "../present/sheets/shop.js";
import { PartsError } from "../problem.js";
import type { Ratings } from "../ratings.js";
import { TECHNOLOGIES } from "../rules/technologies.js";
import type { Table } from "../table.js";

/** A part looked for without a place in a circuit: base units, `within` a ratio, null where it does not matter. */
export type Sought = {
  readonly kind: Kind;
  readonly value: number;
  readonly within: number;
  readonly watts: number | null;
  readonly volts: number | null;
  readonly technology: string | null;
};

/**
 * The offers of a table that serve a part looked for, best first: what WHO_SELLS shows.
 *
 * @param table Heads and rows of the sheet Offers, or of any table with the same heads.
 * @throws PartsError "not-a-list" where the heads lack vendor, kind or value; "unreadable" where a row can't be read.
 */
export function whoSells(table: Table, sought: Sought): readonly Match[] {
  return matchOffers(ratingsOf(sought), offersOf(table)).matches;
}

function offersOf(table: Table): readonly Offer[] {
  const heads = table.heads.map((head) => head.trim().toLowerCase());
  const missing = ["vendor", "kind", "value"].filter((head) => !heads.includes(head));
  if (missing.length > 0)
    throw new PartsError("not-a-list", "the offers given", `Give heads and rows; there is no ${missing.join(", ")}.`);
  return rowsOf(OFFERS_SHEET, table)
    .filter(({ vendor }) => vendor !== null)
    .map(offerOfRow);
}

/** The limits of a part looked for: its value within a ratio, nothing asked that was not said. */
function ratingsOf({ kind, value, within, watts, volts, technology }: Sought): Ratings {
  return {
    ...{ kind, wanted: value, gate: "nominal", old: null, tolerance: null, safety: null, voltsKind: "dc" },
    window: { min: value * (1 - within), max: value * (1 + within) },
    ...{ leastWatts: watts, wantWatts: null, mostWatts: null, leastVolts: volts, wantVolts: null },
    technologies: technology === null ? [] : [technologyIdOf(technology)],
    ...{ temperatureCoefficient: null, taper: null, room: null, aim: null, rejected: [], because: [] },
  };
}

function technologyIdOf(name: string): string {
  const plain = name
    .trim()
    .toLowerCase()
    .replace(/[\s-]+/g, "_");
  const found = TECHNOLOGIES.find(({ id, label }) => id === plain || label.toLowerCase() === name.trim().toLowerCase());
  if (found) return found.id;
  throw new PartsError("unknown-name", name, "Write it like metal film, metal oxide, polyester or alu axial.");
}
