import { type Place, UNKNOWN_PLACE } from "../circuit/place.js";
import type { Evidence } from "../decide/decide.js";
import type { Finding, Reading } from "../decide/reading.js";
import type { Part } from "../part.js";
import { partOfRow } from "../present/partRow.js";
import { measuredValue, readReadings } from "../present/readingText.js";
import type { PartsRow } from "../present/sheets/parts.js";
import { readValue } from "../quantity/readValue.js";
import type { Ratings } from "../ratings.js";
import type { RulesInForce } from "../rule.js";

/** A bias supply's volts are as hard on a part below the chassis as above it. */
const magnitude = (volts: number | null) => (volts === null ? null : Math.abs(volts));

/** The place as the row tells it: a filter's peak is that before the tubes draw current, and no rating is without it. */
const placeOf = (row: PartsRow): Place => ({
  ...UNKNOWN_PLACE,
  volts: magnitude(row.voltsThere),
  peakVolts: magnitude(row.peakVoltsThere),
  amps: row.ampsThere,
  celsius: row.celsiusThere,
  rectifierFarads: row.mostCapacitance === null ? null : readValue(row.mostCapacitance, { kind: "capacitor" }).value,
  gridOhms: row.gridResistor === null ? null : readValue(row.gridResistor, { kind: "resistor" }).value,
});

const metres = (millimetres: number | null) => (millimetres === null ? null : millimetres / 1000);

/** The room as the row tells it, in metres; null where nobody measured any of it. */
export function roomOfRow({ roomLength, roomDiameter, tagSpan }: PartsRow): Ratings["room"] {
  if (roomLength === null && roomDiameter === null && tagSpan === null) return null;
  return {
    lengthMetres: metres(roomLength),
    diameterMetres: metres(roomDiameter),
    spanMetres: metres(tagSpan),
  };
}

/**
 * What a row of Parts says of its place and of the bench, as the stages take it.
 *
 * @throws PartsError "unreadable" where a figure or a reading of the row is none.
 */
export function evidenceOf(row: PartsRow, inForce: RulesInForce): Evidence {
  const readings = row.reading === null ? [] : benchReadings(row, row.reading, partOfRow(row, inForce.rules).kind);
  return { place: placeOf(row), readings };
}

function benchReadings(row: PartsRow, cell: string, kind: Part["kind"]): readonly Reading[] {
  const { inPlace, accuracy } = row;
  return readReadings(cell, row.value, kind).map((read) => ({
    quantity: read.measured,
    value: measuredValue(read),
    inPlace: inPlace !== "lifted",
    accuracy,
    atVolts: read.atVolts,
  }));
}

/** A verdict that the user typed, as what he found; null for one that is neither good nor bad. */
export function foundBy(verdict: string): Finding | null {
  return /good|bad/.test(verdict) ? { text: `found ${verdict}`, bad: verdict.includes("bad") } : null;
}
