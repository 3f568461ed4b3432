import { opposition } from "./network.js";
import type { StockPart } from "./stock.js";
import { bearableVolts, bearableWatts, type Wants } from "./wants.js";

/** The parts of a stock that can serve at all, by what they oppose, each worth looking at; equal values once only. */
export function usableStock(wants: Wants): StockPart[] {
  const { kind, mostPrice } = wants;
  const parts = wants.stock
    .filter(
      (part) =>
        part.value > 0 &&
        Number.isFinite(part.value) &&
        part.pieces !== 0 &&
        bearableVolts(part, wants) > 0 &&
        bearableWatts(part, wants) > 0 &&
        (mostPrice == null || (part.price ?? Number.POSITIVE_INFINITY) <= mostPrice),
    )
    .sort((a, b) => opposition(a.value, kind) - opposition(b.value, kind));
  return parts.filter((part, at) => !isOutdone(part, at, parts, wants));
}

/** Whether there is enough of a part of the same value that serves as well in every way (of two equal ones the first). */
function isOutdone(part: StockPart, at: number, sorted: readonly StockPart[], wants: Wants): boolean {
  for (let i = at - 1; i >= 0 && sorted[i]!.value === part.value; i--)
    if (outdoes(sorted[i]!, part, wants)) return true;
  for (let i = at + 1; i < sorted.length && sorted[i]!.value === part.value; i++) {
    if (outdoes(sorted[i]!, part, wants) && !outdoes(part, sorted[i]!, wants)) return true;
  }
  return false;
}

function outdoes(a: StockPart, b: StockPart, wants: Wants): boolean {
  return (
    (a.pieces ?? Number.POSITIVE_INFINITY) >= (wants.mostParts ?? 4) &&
    (a.price ?? Number.POSITIVE_INFINITY) <= (b.price ?? Number.POSITIVE_INFINITY) &&
    (a.tolerance?.minus ?? 0) <= (b.tolerance?.minus ?? 0) &&
    (a.tolerance?.plus ?? 0) <= (b.tolerance?.plus ?? 0) &&
    bearableWatts(a, wants) >= bearableWatts(b, wants) &&
    bearableVolts(a, wants) >= bearableVolts(b, wants)
  );
}
