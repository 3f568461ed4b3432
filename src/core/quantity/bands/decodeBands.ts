import { attempt } from "../../problem.js";
import type { BandReading } from "./bandReading.js";
import { readBodyEndDot } from "./bodyEndDot.js";
import { readCeramicBands } from "./ceramicBands.js";
import { type Colour, figureOf, readColours } from "./colours.js";
import { readThreeDotMica, readThreeFigureMica, readTypeFirstMica } from "./micaDots.js";
import { readPaperBands } from "./paperBands.js";
import { readReliabilityBands, readResistorBands } from "./resistorBands.js";

/** The colour codes that can be read. The same colours mean different parts in different codes: the code has to be said. */
export const BAND_CODES = [
  "resistor",
  "reliability",
  "body-end-dot",
  "mica, type first",
  "mica, three figures",
  "mica, three dots",
  "moulded paper",
  "ceramic",
] as const;
export type BandCode = (typeof BAND_CODES)[number];

const READERS: Readonly<Record<BandCode, (colours: readonly Colour[]) => BandReading>> = {
  resistor: readResistorBands,
  reliability: readReliabilityBands,
  "body-end-dot": readBodyEndDot,
  "mica, type first": readTypeFirstMica,
  "mica, three figures": readThreeFigureMica,
  "mica, three dots": readThreeDotMica,
  "moulded paper": readPaperBands,
  ceramic: readCeramicBands,
};

/** Codes written as a row of like bands, which may be held either way round. */
const CAN_BE_TURNED: readonly BandCode[] = ["resistor", "reliability"];

/**
 * What the colours of a part say in a given code, and what they would say from the other end where that works too.
 *
 * @param colours A text (`yellow violet orange gold`) or a list, in the order of the code; see each code's own reader.
 * @returns `turned` is null when the colours make sense one way only. No value starts with nought when turned.
 * @throws PartsError "unknown-name" for a word that is no colour, "unreadable" when the colours make no such part.
 * @see IEC 60062
 * @example decodeBands("brown black black brown brown").turned?.value // 110
 */
export function decodeBands(
  colours: string | readonly Colour[],
  code: BandCode = "resistor",
): { readonly reading: BandReading; readonly turned: BandReading | null } {
  const list = typeof colours === "string" ? readColours(colours) : colours;
  return { reading: READERS[code](list), turned: CAN_BE_TURNED.includes(code) ? turned(list, code) : null };
}

function turned(colours: readonly Colour[], code: BandCode): BandReading | null {
  const other = [...colours].reverse();
  // No value starts with nought, gold, silver or a missing band: most parts are settled here.
  if (!figureOf(other[0] ?? "none") || other.join() === colours.join()) return null;
  return attempt(() => READERS[code](other));
}
