import { linePacker, type PackedLines, PartsError } from "../core/index.js";
import { decodeText } from "./decodeText.js";
import { formOf } from "./formOf.js";
import { type LineOfText, linesOfText } from "./text.js";
import { readXlsx } from "./xlsx/readXlsx.js";

const TOLD_EVERY = 20_000;

/**
 * The lines of a table of any length in little room: CSV, TSV or .xlsx.
 *
 * Yields the share that is done, 0..1, so that whoever drives it can tell, and can stop.
 *
 * @throws PartsError "unreadable" for a file that is no table, "not-a-list" for an empty one, "too-much" past a limit.
 */
export async function* packTable(name: string, bytes: Uint8Array): AsyncGenerator<number, PackedLines> {
  if (bytes.length === 0) throw new PartsError("not-a-list", name, "The file is empty.");
  const packer = linePacker();
  let count = 0;
  for (const { line, done } of await linesOf(name, bytes)) {
    packer.add(line);
    if (++count % TOLD_EVERY === 0) yield done;
  }
  return packer.finish();
}

async function linesOf(name: string, bytes: Uint8Array): Promise<Iterable<LineOfText>> {
  const form = formOf(bytes);
  if (form === "text") return linesOfText(decodeText(bytes, name), name).lines;
  if (form !== "zip") throw new PartsError("unreadable", name, "Give a vendor's list as CSV, TSV or .xlsx.");
  const { lines } = await readXlsx(bytes, name, {});
  return lines.map((line, i) => ({ line, done: i / lines.length }));
}
