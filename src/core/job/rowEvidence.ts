import type { Place } from "../circuit/place.js";
import type { Evidence } from "../decide/decide.js";
import type { Finding, Reading } from "../decide/reading.js";
import type { Part } from "../part.js";
import { partOfRow } from "../present/partRow.js";
import { measuredValue, readReadings } from "../present/readingText.js";
import type { PartsRow } from "../present/sheets/parts.js";
import { readValue } from "../quantity/readValue.js";
import type { Ratings } from "../ratings.js";
import { findingsIn } from "../read/said/findingsIn.js";
import { saidFigures } from "../read/said/saidFigures.js";
import type { RulesInForce } from "../rule.js";
import { magnitude, placeSaid, statedIn, testSaid } from "./placeSaid.js";

/** The place as the row's own cells tell it; null where a cell is empty. */
const cellsOf = (row: PartsRow): Partial<Place> => ({
  volts: magnitude(row.voltsThere),
  peakVolts: magnitude(row.peakVoltsThere),
  amps: row.ampsThere,
  celsius: row.celsiusThere,
  rectifierFarads: row.mostCapacitance === null ? null : readValue(row.mostCapacitance, { kind: "capacitor" }).value,
  gridOhms: row.gridResistor === null ? null : readValue(row.gridResistor, { kind: "resistor" }).value,
});

const known = <T extends object>(place: T): Partial<T> =>
  Object.fromEntries(Object.entries(place).filter(([, figure]) => figure !== null)) as Partial<T>;

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
 * What a row of Parts says of its place and of the bench, as the stages take it. What else is known of it is read from its
 * words ("heaters 62.6 V; crackles"); a cell of its own outranks them.
 *
 * @throws PartsError "unreadable" where a figure or a reading of the row is none.
 */
export function evidenceOf(row: PartsRow, inForce: RulesInForce): Evidence {
  const part = partOfRow(row, inForce.rules);
  const [words, className] = [row.alsoKnown ?? "", part.className.value];
  const said = saidFigures(words, { kind: part.kind, className });
  const figure = statedIn(said);
  return {
    place: { ...placeSaid(part.kind, figure, said.get("nodeVolts") ?? []), ...known(cellsOf(row)) },
    readings: row.reading === null ? [] : benchReadings(row, row.reading, part.kind),
    findings: [...findingsIn(words), ...testSaid(className, figure)],
  };
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
