import type { Offer } from "../offer.js";
import { type Kind, kindNamed } from "../part.js";
import { readTolerance, writeTolerance } from "../quantity/tolerance.js";
import { readCanSections, writeCanSections } from "./canSections.js";
import { readPrices, writePrices } from "./prices.js";
import { emptyRow } from "./sheet.js";
import { OFFERS_SHEET, type OffersRow, type OnHandRow } from "./sheets/shop.js";
import { readValueOrSpan, writeValueOrSpan } from "./spanText.js";
import { readWarnings, writeWarnings } from "./warningWords.js";

const MILLI = 1000;

/** An offer as a row of Offers (or of On hand). */
export function rowOfOffer(offer: Offer): OffersRow {
  const { vendor, stockNumber, description, kind, watts, volts, voltsKind, safetyClass, temperatureCoefficient } =
    offer;
  const { taper, pack, minimum, multiple, stock, currency, status, row, measured } = offer;
  const copied = { vendor, stockNumber, description, kind, watts, volts, voltsKind, safetyClass };
  const span = offer.valueMin === null || offer.valueMax === null ? null : { min: offer.valueMin, max: offer.valueMax };
  return {
    ...emptyRow(OFFERS_SHEET),
    ...copied,
    ...{ temperatureCoefficient, taper, pack, minimum, multiple, stock, currency, status, row, measured },
    value: offer.value === null ? null : writeValueOrSpan(offer.value, null, kind),
    size: offer.value,
    range: writeValueOrSpan(null, span, kind),
    tolerance: offer.tolerance && writeTolerance(offer.tolerance),
    technology: offer.technology.join(" ") || null,
    withSwitch: offer.withSwitch || null,
    sections: offer.sections && writeCanSections(offer.sections),
    length: offer.lengthMetres === null ? null : offer.lengthMetres * MILLI,
    diameter: offer.diameterMetres === null ? null : offer.diameterMetres * MILLI,
    newOldStock: offer.newOldStock || null,
    prices: writePrices(offer.breaks) || null,
    unclear: writeWarnings(offer.warnings) || null,
  };
}

/** An offer's id in a workbook: its vendor and stock number, or the row of the list where it has none. */
export const offerId = (vendor: string, stockNumber: string | null, row: number): string =>
  `${vendor} ${stockNumber ?? `row ${row}`}`;

/**
 * The offer that a row states.
 *
 * @throws PartsError "unreadable" where a figure can't be read.
 */
export function offerOfRow(row: OffersRow | OnHandRow): Offer {
  const kind: Kind = kindNamed(row.kind);
  const vendor = row.vendor ?? "";
  const span = readValueOrSpan(row.range, kind).span;
  const { stockNumber, watts, volts, voltsKind, safetyClass, temperatureCoefficient, taper, stock, currency } = row;
  return {
    ...{ vendor, kind, stockNumber, watts, volts, voltsKind, safetyClass, temperatureCoefficient, taper },
    ...{ stock, currency, measured: row.measured },
    id: offerId(vendor, stockNumber, row.row ?? 0),
    row: row.row ?? 0,
    description: row.description ?? "",
    value: readValueOrSpan(row.value, kind).value,
    valueMin: span?.min ?? null,
    valueMax: span?.max ?? null,
    tolerance: row.tolerance === null ? null : readTolerance(row.tolerance),
    technology: (row.technology ?? "").split(/[\s,]+/).filter(Boolean),
    withSwitch: row.withSwitch ?? false,
    sections: readCanSections(row.sections),
    newOldStock: row.newOldStock ?? false,
    pack: row.pack ?? 1,
    minimum: row.minimum ?? 1,
    multiple: row.multiple ?? 1,
    breaks: readPrices(row.prices),
    status: row.status ?? "in-stock",
    lengthMetres: row.length === null ? null : row.length / MILLI,
    diameterMetres: row.diameter === null ? null : row.diameter / MILLI,
    warnings: readWarnings(row.unclear),
  };
}
