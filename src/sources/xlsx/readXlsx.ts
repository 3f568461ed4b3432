import { PartsError, type SourceLine } from "../../core/index.js";
import type { ReadOptions, Source, SourcePage } from "../source.js";
import { unzipWithin } from "../unzipWithin.js";
import { attribute, elements, runsText } from "./markup.js";
import { looksOf } from "./numberText.js";
import { sheetRows } from "./sheetRows.js";

const NEEDED = /^xl\/(workbook\.xml|_rels\/workbook\.xml\.rels|sharedStrings\.xml|styles\.xml|worksheets\/[^/]+\.xml)$/;

/**
 * The visible sheets of an .xlsx workbook as lines with cells, one sheet after the other.
 *
 * The first sheet's line numbers are its row numbers. A formula counts as what it last showed; a text cell that looks
 * like a formula stays text.
 *
 * @throws PartsError "unreadable" for what is no workbook, "too-much" for one that unpacks beyond the limit.
 */
export function readXlsx(bytes: Uint8Array, name: string, options: ReadOptions = {}, mostBytes?: number): Source {
  const files = unzipWithin(bytes, (file) => NEEDED.test(file), mostBytes);
  const text = (path: string) => new TextDecoder().decode(files.get(path) ?? new Uint8Array(0));
  if (!files.has("xl/workbook.xml")) {
    throw new PartsError("unreadable", name, "It is an archive, but no .xlsx workbook. Unpack it first.");
  }
  const strings = [...elements(text("xl/sharedStrings.xml"), "si")].map((item) => runsText(item.inside));
  const looks = looksOf(text("xl/styles.xml"));
  const sheets = sheetsOf(text("xl/workbook.xml"), text("xl/_rels/workbook.xml.rels"));
  const lines: SourceLine[] = [];
  const pages: SourcePage[] = [];
  let before = 0;
  sheets.forEach((sheet, i) => {
    options.onProgress?.(i / sheets.length, sheet.name);
    pages.push({ name: sheet.name, firstLine: before + 1 });
    let last = 0;
    for (const row of sheetRows(text(sheet.path), strings, looks)) {
      lines.push({ number: before + row.number, text: row.cells.join("\t"), cells: row.cells });
      last = row.number;
    }
    before += last;
  });
  return { form: "workbook", lines, pages, places: [], doubtful: [] };
}

/** The visible sheets in the order of their tabs. */
function sheetsOf(workbook: string, relations: string): { name: string; path: string }[] {
  const targets = new Map(
    [...elements(relations, "Relationship")].map(({ tag }) => [attribute(tag, "Id"), attribute(tag, "Target") ?? ""]),
  );
  return [...elements(workbook, "sheet")]
    .filter(({ tag }) => (attribute(tag, "state") ?? "visible") === "visible")
    .map(({ tag }) => {
      const target = targets.get(attribute(tag, "r:id")) ?? "";
      return { name: attribute(tag, "name") ?? "", path: target.startsWith("/") ? target.slice(1) : `xl/${target}` };
    });
}
