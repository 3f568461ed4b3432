import type { Kind } from "../part.js";

/**
 * One technology: `kind` is null where any kind of part can be meant; `words` are those of offers, `also` what else an
 * offer must say; `tolerances` are those it is stocked in, widest first, `finest` the closest series of values (both from
 * memory); `made` is what is usually stocked, in ohms or farads and watts (from memory: shops differ; the
 * 1-megohm end of the common oxide family is common practice).
 */
export type Technology = {
  readonly id: string;
  readonly label: string;
  readonly kind: Kind | null;
  readonly goodFor: readonly string[];
  readonly avoidFor: readonly string[];
  readonly why: string;
  readonly words: readonly string[];
  readonly also: string;
  readonly tolerances: readonly number[];
  readonly finest: string | null;
  readonly made: { readonly min: number; readonly max: number; readonly watts: readonly number[] | null } | null;
};
