import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { PartsError } from "../core/index.js";
import { placeOf, zoneOf } from "./addresses.js";
import { addFilter, withoutFilters } from "./embeddedFilter.js";
import { textContent } from "./embeddedText.js";
import { type Getters, Model, type Position } from "./library.js";
import { guardedParts, type Parts, type SheetFacts } from "./xlsxIn.js";
import { mendedSheet, sharedTexts } from "./xlsxOut.js";

/** The most that a workbook may hold once unpacked, in bytes. */
const MOST_BYTES = 300_000_000;

/**
 * The workbook as an .xlsx file that Excel opens: live formulas with their last values, texts as texts.
 * Needs `DOMParser` and `XMLSerializer`, which Node has to borrow.
 */
export async function saveXlsx(model: Model): Promise<Uint8Array> {
  const { files } = await new Model(withoutFilters(model.exportData())).exportXLSX();
  const texts = sharedTexts();
  const sheetIds = model.getters.getSheetIds();
  const packed: Record<string, Uint8Array> = {};
  for (const file of files) {
    if (!("content" in file)) continue;
    const sheet = /^xl\/worksheets\/sheet(\d+)\.xml$/.exec(file.path)?.[1];
    const xml = sheet === undefined ? file.content : mendedSheet(file.content, model, sheetIds[Number(sheet)]!, texts);
    packed[file.path] = strToU8(xml);
  }
  packed["xl/sharedStrings.xml"] = strToU8(texts.xml());
  return zipSync(packed);
}

/**
 * A workbook from an .xlsx file. What its author wrote as text stays text, however it looks.
 *
 * @throws PartsError "unreadable" when the bytes are no .xlsx, "too-much" when they unpack to more than 300 MB.
 */
export function openXlsx(bytes: Uint8Array): Model {
  const { parts, sheets } = guardedParts(unpacked(bytes));
  const loaded = new Model(parts);
  for (const sheet of sheets) restore(loaded, sheet);
  return new Model(loaded.exportData());
}

function unpacked(bytes: Uint8Array): Parts {
  let total = 0;
  const tooMuch = new PartsError("too-much", "This workbook", "Open one that unpacks to less than 300 MB.");
  const files = tried(() =>
    unzipSync(bytes, {
      filter: (file) => {
        total += file.originalSize;
        if (total > MOST_BYTES) throw tooMuch;
        return /\.(xml|rels)$/.test(file.name);
      },
    }),
  );
  const parts = Object.fromEntries(Object.entries(files).map(([path, content]) => [path, strFromU8(content)]));
  if (!parts["xl/workbook.xml"]) throw unreadable();
  return parts;
}

function tried<T>(work: () => T): T {
  try {
    return work();
  } catch (error) {
    throw error instanceof PartsError ? error : unreadable();
  }
}

const unreadable = () => new PartsError("unreadable", "this file", "Save it as an .xlsx workbook and open it again.");

function restore(model: Model, facts: SheetFacts): void {
  const sheetId = model.getters.getSheetIdByName(facts.name);
  if (sheetId === undefined) return;
  for (const { address, text } of facts.texts) {
    const position = { sheetId, ...placeOf(address) };
    if (shows(model.getters, position, text)) continue;
    model.dispatch("UPDATE_CELL", { ...position, ...textContent(text, model.getters.getCell(position)?.format) });
  }
  if (facts.filter !== null) model.dispatch(...addFilter(model, sheetId, zoneOf(facts.filter)));
}

function shows(getters: Getters, position: Position, text: string): boolean {
  const { type, value } = getters.getEvaluatedCell(position);
  return text === "" ? type === "empty" : type === "text" && value === text;
}
