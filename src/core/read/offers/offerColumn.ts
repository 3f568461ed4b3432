import type { DecimalMark } from "../../quantity/notation/number.js";
import type { ColumnField } from "./columnWords.js";

/**
 * One column of a vendor's list and what it holds.
 *
 * `from` is the number of sales units from which a price column's prices hold, `per` the pieces its prices are for, and
 * `unit` the unit its head gives to bare numbers ("uF").
 */
export type OfferColumn = {
  readonly index: number;
  readonly head: string;
  readonly field: ColumnField;
  readonly from: number | null;
  readonly per: number | null;
  readonly unit: string | null;
};

/** How a vendor's list is laid out: guessed once, shown, corrected by the user, remembered for the vendor. */
export type OfferMapping = {
  readonly headLine: number | null;
  readonly mark: DecimalMark;
  readonly currency: string | null;
  readonly columns: readonly OfferColumn[];
};
