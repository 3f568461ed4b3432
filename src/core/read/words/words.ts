import type { Unit } from "../../quantity/notation/units.js";
import type { DecodedCode } from "./codes.js";
import type { Join } from "./lexeme.js";
import type { Meaning } from "./phrases.js";
import type { Token } from "./token.js";

/** One number of a list with the unit printed for it; `from`..`to` are tokens, `to` not included. */
export type Figure = {
  readonly number: number;
  readonly unit: Unit | null;
  readonly from: number;
  readonly to: number;
};

/**
 * Figures that belong together: "3 - 30 mmf", "40-40-20 mfd", "1 1/2 meg".
 *
 * `aside` says why the amount is not the thing's own rating: it is a tap, a matching limit, a peak, what an earlier set
 * had ...; null when it is. `joiner` is the sign or word between the figures.
 */
export type Amount = {
  readonly figures: readonly Figure[];
  readonly join: Join;
  readonly joiner: string;
  readonly from: number;
  readonly to: number;
  readonly aside: string | null;
};

/** A tolerance as printed: ratios, or absolute amounts in the unit printed (null: the part's own). */
export type PrintedTolerance = {
  readonly minus: number;
  readonly plus: number;
  readonly absolute: boolean;
  readonly unit: Unit | null;
  readonly from: number;
  readonly to: number;
};

/** "Same as R12", "part of T3": `from` is the token it starts at. */
export type Reference = {
  readonly as: "same" | "part-of" | "with";
  readonly designator: string;
  readonly from: number;
  readonly to: number;
};

/** A section of a can as printed: its letter or mark, and its tokens. */
export type Labelled = { readonly label: string; readonly from: number; readonly to: number };

/** All that the words of one text say; nothing is decided yet. */
export type Words = {
  readonly text: string;
  readonly tokens: readonly Token[];
  readonly amounts: readonly Amount[];
  readonly tolerances: readonly PrintedTolerance[];
  readonly meanings: readonly Meaning[];
  readonly codes: readonly DecodedCode[];
  readonly references: readonly Reference[];
  readonly labels: readonly Labelled[];
  readonly coefficient: string | null;
  readonly colours: ColourReading | null;
};

/** What colour words in brackets say: ohms, and the tolerance when a fourth band is named. */
export type ColourReading = { readonly ohms: number; readonly tolerance: number | null };
