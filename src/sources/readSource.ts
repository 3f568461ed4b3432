import { PartsError } from "../core/index.js";
import { decodeText } from "./decodeText.js";
import { formOf } from "./formOf.js";
import { readPdf } from "./pdf/readPdf.js";
import { readScan } from "./scan/readScan.js";
import type { ReadOptions, Source } from "./source.js";
import { readText } from "./text.js";
import { readXlsx } from "./xlsx/readXlsx.js";

/**
 * Any file a restorer can get hold of, as lines: text, CSV, TSV, .xlsx, a PDF's
 * text layer, a scanned or photographed page.
 *
 * @param name The file's name; its ending only helps, the bytes decide.
 * @throws PartsError "unreadable" for a file that is none of these, "not-a-list" for an empty one, "too-much" past a limit.
 * @example (await readSource("list.txt", bytes)).lines[0].text
 */
export async function readSource(name: string, bytes: Uint8Array, options: ReadOptions = {}): Promise<Source> {
  options.signal?.throwIfAborted();
  if (bytes.length === 0) throw new PartsError("not-a-list", name, "The file is empty.");
  const source = await read(name, bytes, options);
  if (source.lines.every((line) => line.text.trim() === "")) {
    throw new PartsError("not-a-list", name, "There is nothing in it but blank lines.");
  }
  return source;
}

async function read(name: string, bytes: Uint8Array, options: ReadOptions): Promise<Source> {
  const form = formOf(bytes);
  if (form === "zip") return readXlsx(bytes, name, options);
  if (form === "pdf") return readPdf(bytes, name, options);
  if (form === "picture") return readScan(bytes, name, options);
  if (form === "old-workbook") throw new PartsError("unreadable", name, "Save it as .xlsx or CSV and give that.");
  return readText(decodeText(bytes, name), name, options.onProgress);
}
