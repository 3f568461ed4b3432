import type { Kind } from "../part.js";
import { readMeasure } from "../quantity/readMeasure.js";
import { readTolerance, writeTolerance } from "../quantity/tolerance.js";
import type { PartsRow } from "./sheets/parts.js";
import { readValueOrSpan, writeValueOrSpan } from "./spanText.js";

/** What a person reads on the page where we read something else, as typed; an empty text says that nothing is printed. */
export type Correction = Readonly<Partial<Record<"value" | "tolerance" | "watts" | "volts", string>>>;

/** The cells of a row that a correction fills, and `unsure` emptied: a person has looked. */
export type CorrectedCells = Partial<Pick<PartsRow, "value" | "size" | "tolerance" | "watts" | "volts" | "unsure">>;

/**
 * A correction as cells of Parts, in the sheet's own notation. They differ from what `from` says we wrote, so that they
 * come back as Facts from the user.
 *
 * @throws PartsError "unreadable" where a text is no such figure
 * @example cellsOfCorrection({ watts: "1/2 W" }, "resistor") // { watts: 0.5, unsure: null }
 */
export function cellsOfCorrection(correction: Correction, kind: Kind): CorrectedCells {
  const { value, tolerance, watts, volts } = correction;
  return {
    ...(value !== undefined && valueCells(value.trim(), kind)),
    ...(tolerance !== undefined && { tolerance: filled(tolerance, (text) => writeTolerance(readTolerance(text))) }),
    ...(watts !== undefined && { watts: filled(watts, (text) => readMeasure(text, "watt")) }),
    ...(volts !== undefined && { volts: filled(volts, (text) => readMeasure(text, "volt")) }),
    unsure: null,
  };
}

function valueCells(text: string, kind: Kind): CorrectedCells {
  const { value, span } = readValueOrSpan(text === "" ? null : text, kind);
  return { value: writeValueOrSpan(value, span, kind), size: value ?? span?.max ?? null };
}

const filled = <T>(text: string, read: (text: string) => T): T | null => (text.trim() === "" ? null : read(text));
