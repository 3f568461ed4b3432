import type { Unit } from "../../quantity/notation/units.js";
import type { Field } from "./vocabulary.js";

/** One phrase of the vocabulary: what it says, and the keys of its words. */
export type Phrase = { readonly field: Field; readonly value: string; readonly keys: readonly string[] };

/** How the figures of one amount hang together: one, a range (3-30), alternatives (.1 or .25), or a list (40-40-20). */
export type Join = "one" | "range" | "or" | "list";

/**
 * All that one word or sign can be in the notation of parts lists; null or none where it cannot.
 *
 * Each word of a text is looked up once, and whatever reads the text afterwards asks this instead of a table of its own.
 */
export type Lexeme = {
  /** Phrases that begin with it, longest first. */
  readonly phrases: readonly Phrase[];
  readonly unit: Unit | null;
  /** The joint it makes between two figures. */
  readonly join: Join | null;
  /** The side of a tolerance it opens: ±, plus, minus. */
  readonly side: "both" | "plus" | "minus" | null;
  /** Whether a spelled-out number may begin with it: "three", "hundred". */
  readonly isNumber: boolean;
  /** Whether a temperature code may begin with it: NPO, the N of "N 150". */
  readonly isCoefficient: boolean;
  /** The digit of a colour. */
  readonly digit: number | null;
  /** The name of a mark stamped beside the lug of a can. */
  readonly mark: string | null;
};
