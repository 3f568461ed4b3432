import type { PriceBreak } from "../offer.js";

/** Price breaks as a cell. @example writePrices([[1, 0.31], [10, 0.232]]) // "0.31; 10+ 0.232" */
export function writePrices(breaks: readonly PriceBreak[]): string {
  return breaks.map(([from, price]) => (from === 1 ? `${price}` : `${from}+ ${price}`)).join("; ");
}

/** Such a cell read back; entries that say no price are passed over, a decimal comma is understood. */
export function readPrices(cell: string | null): readonly PriceBreak[] {
  return (cell ?? "").split(";").flatMap((entry): PriceBreak[] => {
    const found = /^(?:(\d+)\+?\s*[: ]\s*)?(\d+(?:[.,]\d+)?)$/.exec(entry.trim());
    return found ? [[Number(found[1] ?? 1), Number(found[2]!.replace(",", "."))]] : [];
  });
}
