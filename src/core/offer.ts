import type { CanSection, Kind, Tolerance, Warning } from "./part.js";

/** Whether an offer can be had. */
export const STATUSES = ["in-stock", "out-of-stock", "last-time-buy", "discontinued"] as const;
export type Status = (typeof STATUSES)[number];

/** From how many sales units on one unit costs how much, in the vendor's currency. */
export type PriceBreak = readonly [from: number, price: number];

/**
 * One line of a vendor's list, or of the user's own stock (a vendor whose price is nothing).
 *
 * Base units. `technology` are words (metal-film, polyester, axial ...). `pack` is pieces in one sales unit; `stock`
 * (null: no limit known), `minimum`, `multiple` and `breaks` count sales units. `row` is the 1-based source row.
 */
export type Offer = {
  readonly id: string;
  readonly vendor: string;
  readonly row: number;
  readonly stockNumber: string | null;
  readonly description: string;
  readonly kind: Kind;
  readonly value: number | null;
  readonly valueMin: number | null;
  readonly valueMax: number | null;
  readonly tolerance: Tolerance | null;
  readonly watts: number | null;
  readonly volts: number | null;
  readonly voltsKind: "ac" | "dc" | null;
  readonly technology: readonly string[];
  readonly safetyClass: string | null;
  readonly temperatureCoefficient: string | null;
  readonly taper: string | null;
  readonly withSwitch: boolean;
  readonly sections: readonly CanSection[] | null;
  readonly newOldStock: boolean;
  readonly measured: number | null;
  readonly pack: number;
  readonly minimum: number;
  readonly multiple: number;
  readonly stock: number | null;
  readonly breaks: readonly PriceBreak[];
  readonly currency: string | null;
  readonly status: Status;
  readonly lengthMetres: number | null;
  readonly diameterMetres: number | null;
  readonly warnings: readonly Warning[];
};
