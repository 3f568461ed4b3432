import type { Source } from "../source.js";
import type { PagePictures } from "./pagePictures.js";
import { pdfPictures } from "./pdfPictures.js";

/** The pages of a scan (the picture itself) or of a PDF (drawn), in a browser; null for what has no look of its own. */
export function picturesOf(form: Source["form"], bytes: Uint8Array): PagePictures | null {
  if (form === "pdf") return pdfPictures(bytes);
  if (form !== "scan") return null;
  const address = URL.createObjectURL(new Blob([bytes.slice()]));
  return { page: async () => address, close: () => URL.revokeObjectURL(address) };
}
