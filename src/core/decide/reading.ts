import type { InPlaceQuantity } from "../measure/inPlaceTells.js";
import type { Verdict } from "../measure/verdict.js";
import type { Span } from "../part.js";

/**
 * One reading of an old part, in base units (ohms, farads, amperes, henries).
 *
 * `value` is infinite for open and 0 for a short; null where it would not settle. `accuracy` is the meter's share of the
 * reading (0.01 is 1 %); null is taken as exact. `atVolts` is what an insulation or leakage was read at, the rated volts where left out.
 */
export type Reading = {
  readonly quantity: InPlaceQuantity;
  readonly value: number | null;
  readonly inPlace: boolean;
  readonly accuracy: number | null;
  readonly atVolts?: number | null;
};

/** Something seen, heard or smelt on the part: a cracked body, green ends, a crackle. `bad` false is "looks and works well". */
export type Finding = { readonly text: string; readonly bad: boolean };

/**
 * A reading against its limits: what it says, the limits, between what the true value lies (null where it would not
 * settle), how far off nominal, and why it says no more.
 */
export type Judged = {
  readonly reading: Reading;
  readonly verdict: Verdict;
  readonly limits: Span | null;
  readonly between: Span | null;
  readonly drift: number | null;
  readonly because: string;
};
