import type { ChangedOffers, Offer, RefusedRow, ShownColumn, Wanted } from "../core/index.js";
import type { Patience } from "../threads/patience.js";

/** A long list as this browser keeps it: what is told of it without opening it. */
export type KeptList = {
  readonly vendor: string;
  readonly listDate: string;
  readonly file: string;
  readonly rows: number;
  readonly offers: number;
  readonly refused: number;
  readonly bytes: number;
};

/**
 * A vendor's file tried out under a mapping: its columns and what its rows make.
 *
 * `offers` and `refused` are of the rows tried: all of them in a short list (`isWhole`), else a sample.
 */
export type TriedList = {
  readonly rows: number;
  readonly isWhole: boolean;
  readonly tried: number;
  readonly columns: readonly ShownColumn[];
  readonly understood: string;
  readonly currency: string | null;
  readonly offers: readonly Offer[];
  readonly refused: readonly RefusedRow[];
};

/** What became of a long list that was taken in, and how it differs from the one before, if there was one. */
export type TakenList = {
  readonly kept: KeptList;
  readonly understood: string;
  readonly currency: string | null;
  readonly reasons: readonly (readonly [reason: string, rows: number])[];
  readonly changes: readonly ChangedOffers[] | null;
  readonly seconds: { readonly lines: number; readonly offers: number };
};

/** A file as the browser gives it, or bytes with a name. */
export type ListFile = { readonly name: string; readonly arrayBuffer: () => Promise<ArrayBuffer> };

/** Vendors' lists read in a thread of their own, and the long ones kept in this browser. */
export type LongLists = {
  /** Reads a file's lines, to be tried and taken. One file is open at a time. */
  readonly open: (file: ListFile, patience?: Patience) => Promise<{ readonly rows: number }>;
  /** What the open file is under a mapping. @param columns As a cell of Vendors says it; null: as guessed. */
  readonly tryOut: (vendor: string, columns: string | null) => Promise<TriedList>;
  /** Reads the open file whole and keeps it as this vendor's list. */
  readonly take: (vendor: string, listDate: string, columns: string | null, patience?: Patience) => Promise<TakenList>;
  /** The lists that this browser keeps. */
  readonly kept: () => Promise<readonly KeptList[]>;
  readonly forget: (vendor: string) => Promise<void>;
  /** Refused rows of a kept list, counted from 0. */
  readonly refused: (vendor: string, from: number, to: number) => Promise<readonly RefusedRow[]>;
  /** The offers of a kept list that come into play for some wants, at most so many each, and those known by their numbers. */
  readonly find: (
    vendor: string,
    wants: readonly Wanted[],
    most: number,
    known: readonly Pick<Offer, "stockNumber" | "description">[],
  ) => Promise<{ readonly inPlay: readonly Offer[]; readonly known: readonly Offer[] }>;
};
