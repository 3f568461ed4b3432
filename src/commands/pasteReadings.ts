import {
  attempt,
  type IN_PLACE,
  type PARTS_SHEET,
  type PastedLine,
  pastedReadings,
  type RulesInForce,
} from "../core/index.js";
import type { ViewRow } from "./openSheet.js";
import { type Taken, type Told, tellsOf } from "./readings.js";

type PartRow = ViewRow<typeof PARTS_SHEET>;

/** A pasted line, and for a reading what it will say in its row; `reason` tells why a line means nothing. */
export type PasteLine = PastedLine & { readonly taken: Taken | null; readonly told: Told | null };

/** What a line means that does not say it itself. */
export type PasteDefaults = {
  readonly section: string | null;
  /** Rows that bare figures take in turn. */
  readonly inOrder: readonly PartRow[];
  readonly inPlace: (typeof IN_PLACE)[number];
  readonly accuracy: number | null;
};

/**
 * Every line of pasted readings with what it means and what its row will say, before anything is written.
 *
 * @param rows All rows of the set.
 */
export function pastePreview(
  text: string,
  rows: readonly PartRow[],
  defaults: PasteDefaults,
  inForce: RulesInForce,
): readonly PasteLine[] {
  const { section, inOrder } = defaults;
  const into = { rows: rows.map(({ values }) => values), section, inOrder: inOrder.map((row) => rows.indexOf(row)) };
  return pastedReadings(text, into).map((line) => withTold(line, rows, defaults, inForce));
}

function withTold(
  line: PastedLine,
  rows: readonly PartRow[],
  defaults: PasteDefaults,
  inForce: RulesInForce,
): PasteLine {
  const row = line.at === null ? undefined : rows[line.at];
  if (!row || !line.said) return { ...line, taken: null, told: null };
  const { readings, remark } = line.said;
  const { inPlace = defaults.inPlace, accuracy = defaults.accuracy } = withoutNulls(line.said);
  const taken = { row, readings, inPlace, accuracy, remark };
  return attempt<PasteLine, PasteLine>(
    () => ({ ...line, taken, told: tellsOf(taken, inForce) }),
    ({ message }) => ({ ...line, became: "not understood", taken: null, told: null, reason: message }),
  );
}

const withoutNulls = ({ inPlace, accuracy }: NonNullable<PastedLine["said"]>) => ({
  inPlace: inPlace ?? undefined,
  accuracy: accuracy ?? undefined,
});
