import {
  guessMapping,
  type OfferMapping,
  readOffers,
  type SourceLine,
  withMapping,
  writeMapping,
} from "../core/index.js";
import { type Book, valuesOf } from "./book.js";
import type { VendorList } from "./bringInOffers.js";
import type { ReadFile } from "./previewList.js";

/** A vendor's file as it came in. */
export type VendorFile = {
  readonly vendor: string;
  readonly file: string;
  readonly bytes: Uint8Array;
  readonly listDate: string;
};

/** The lines of a vendor's file. @throws PartsError "unreadable" for what is no table, "not-a-list" for an empty one. */
export async function vendorLines(read: ReadFile, { file, bytes }: VendorFile): Promise<readonly SourceLine[]> {
  return (await read(file, bytes)).lines;
}

/** How the columns of a vendor's list are understood: as corrected and remembered for that vendor, else as guessed. */
export function mappingFor(book: Book | null, vendor: string, lines: readonly SourceLine[]): OfferMapping {
  const known = book ? valuesOf(book.vendors).find((row) => row.vendor === vendor) : undefined;
  return withMapping(guessMapping(lines), known?.columns ?? null);
}

/** A vendor's lines as offers, under a mapping; what yields none stands beside them with its reason. */
export function vendorList(
  { vendor, listDate }: Pick<VendorFile, "vendor" | "listDate">,
  lines: readonly SourceLine[],
  mapping: OfferMapping,
): VendorList {
  const { offers, refused } = readOffers(lines, { vendor, mapping });
  return { vendor, listDate, currency: mapping.currency, offers, refused, columns: writeMapping(mapping) };
}

/** A vendor's file read whole, its columns as remembered or guessed. */
export async function readVendorList(read: ReadFile, book: Book | null, file: VendorFile): Promise<VendorList> {
  const lines = await vendorLines(read, file);
  return vendorList(file, lines, mappingFor(book, file.vendor, lines));
}
