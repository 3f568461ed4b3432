import { fromFileNames } from "./xlsxNames.js";

/** A text that a file holds in a cell, with its address. */
export type FileText = { readonly address: string; readonly text: string };

/** What the library would misread or leave out of a sheet: its texts, and the range of its filter buttons. */
export type SheetFacts = { readonly name: string; readonly texts: readonly FileText[]; readonly filter: string | null };

/** The parts of an .xlsx by their path. */
export type Parts = Record<string, string>;

/**
 * The parts of a foreign .xlsx made safe to load: names of our functions as users write them, and an apostrophe before
 * each text that would otherwise become a live formula.
 */
export function guardedParts(parts: Parts): { readonly parts: Parts; readonly sheets: readonly SheetFacts[] } {
  const guarded = { ...parts };
  const texts = readShared(guarded);
  const sheets = sheetPaths(parts).map(({ name, path }) => {
    const document = parse(parts[path] ?? "<worksheet/>");
    const facts = { name, texts: guardCells(document, texts), filter: filterOf(document) };
    for (const formula of all(document, "f")) formula.textContent = fromFileNames(formula.textContent ?? "");
    guarded[path] = new XMLSerializer().serializeToString(document);
    return facts;
  });
  return { parts: guarded, sheets };
}

const SHARED = "xl/sharedStrings.xml";

function readShared(parts: Parts): string[] {
  const xml = parts[SHARED];
  if (xml === undefined) return [];
  const document = parse(xml);
  const texts = all(document, "si").map((item) => {
    const text = textOf(item);
    if (text.startsWith("=")) guard(document, item, text);
    return text;
  });
  parts[SHARED] = new XMLSerializer().serializeToString(document);
  return texts;
}

/** A text may be cut into runs; the guarded one is a single run. Readings of Asian characters are no part of it. */
function textOf(item: Element): string {
  return all(item, "t")
    .filter((run) => run.parentElement?.localName !== "rPh")
    .map((run) => run.textContent ?? "")
    .join("");
}

function guard(document: Document, item: Element, text: string): void {
  const run = document.createElementNS(item.namespaceURI, item.prefix ? `${item.prefix}:t` : "t");
  run.textContent = `'${text}`;
  item.replaceChildren(run);
}

function guardCells(document: Document, shared: readonly string[]): FileText[] {
  return all(document, "c").flatMap((cell) => {
    const address = cell.getAttribute("r") ?? "";
    const type = cell.getAttribute("t");
    const value = all(cell, "v")[0];
    if (all(cell, "f").length > 0) return [];
    if (type === "s") return [{ address, text: shared[Number(value?.textContent)] ?? "" }];
    const holder = type === "inlineStr" ? all(cell, "is")[0] : type === "str" ? value : undefined;
    if (!holder) return [];
    const text = type === "inlineStr" ? textOf(holder) : (holder.textContent ?? "");
    if (text.startsWith("=")) {
      if (type === "inlineStr") guard(document, holder, text);
      else holder.textContent = `'${text}`;
    }
    return [{ address, text }];
  });
}

function filterOf(document: Document): string | null {
  const found = all(document, "autoFilter").find((filter) => filter.parentElement?.localName === "worksheet");
  return found?.getAttribute("ref") ?? null;
}

const RELATION = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

function sheetPaths(parts: Parts): { name: string; path: string }[] {
  const relations = all(parse(parts["xl/_rels/workbook.xml.rels"] ?? "<none/>"), "Relationship");
  const targets = new Map(relations.map((one) => [one.getAttribute("Id"), one.getAttribute("Target") ?? ""]));
  return all(parse(parts["xl/workbook.xml"] ?? "<none/>"), "sheet").map((sheet) => {
    const target = targets.get(sheet.getAttributeNS(RELATION, "id")) ?? "";
    return { name: sheet.getAttribute("name") ?? "", path: target.startsWith("/") ? target.slice(1) : `xl/${target}` };
  });
}

const parse = (xml: string) => new DOMParser().parseFromString(xml, "text/xml");

const all = (within: Document | Element, name: string) => Array.from(within.getElementsByTagNameNS("*", name));
