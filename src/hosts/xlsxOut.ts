import type { Cell } from "../core/index.js";
import { placeOf, rangeOf } from "./addresses.js";
import type { EvaluatedCell, Model } from "./library.js";
import { isPlain, toFileNames } from "./xlsxNames.js";

/** The texts of a workbook's file, each once; cells name them by number. */
export type SharedTexts = { readonly indexOf: (text: string) => number; readonly xml: () => string };

/** An empty list of shared texts. */
export function sharedTexts(): SharedTexts {
  const indexes = new Map<string, number>();
  const indexOf = (text: string) => {
    if (!indexes.has(text)) indexes.set(text, indexes.size);
    return indexes.get(text)!;
  };
  const xml = () => {
    const items = [...indexes.keys()].map((text) => `<si><t xml:space="preserve">${escaped(text)}</t></si>`);
    const count = items.length;
    return `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<sst xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" count="${count}" uniqueCount="${count}">${items.join("")}</sst>`;
  };
  return { indexOf, xml };
}

const CELL =
  /<c r="([A-Z]+\d+)"([^>]*)>\s*(?:<f[^>]*ref="([^"]*)"[^>]*>([^<]*)<\/f>)?\s*(?:<v>[^<]*<\/v>|<v\/>)?\s*<\/c>/g;

/**
 * A sheet's part of the file as the library writes it, mended: texts without the apostrophe that guards them in the
 * grid, formulas of one value as plain ones, spilled values, truth values and errors by Excel's rules, filter buttons.
 */
export function mendedSheet(xml: string, model: Model, sheetId: string, texts: SharedTexts): string {
  const cells = xml.replace(CELL, (_, address: string, attributes: string, ref?: string, formula?: string) => {
    const style = / s="\d+"/.exec(attributes)?.[0] ?? "";
    const evaluated = model.getters.getEvaluatedCell({ sheetId, ...placeOf(address) });
    const value = valueXml(evaluated, formula === undefined ? texts : null);
    return `<c r="${address}"${style}${cellType(address, ref, formula)}${value.type}>${formulaXml(address, ref, formula)}${value.xml}</c>`;
  });
  return withFoldsAtLeft(withFilter(cells, filterRange(model, sheetId)));
}

const isOneValue = (address: string, ref: string | undefined, formula: string) =>
  ref === address && isPlain(unescaped(formula));

/** `cm` marks a formula that may spill, as the library's own metadata part defines it. */
function cellType(address: string, ref: string | undefined, formula: string | undefined): string {
  return formula === undefined || isOneValue(address, ref, formula) ? "" : ' cm="1"';
}

function formulaXml(address: string, ref: string | undefined, formula: string | undefined): string {
  if (formula === undefined) return "";
  const text = escaped(toFileNames(unescaped(formula)));
  return isOneValue(address, ref, formula) ? `<f>${text}</f>` : `<f t="array" ref="${ref}">${text}</f>`;
}

function valueXml(cell: EvaluatedCell, texts: SharedTexts | null): { type: string; xml: string } {
  const value: Cell = cell.value;
  if (cell.type === "error")
    return { type: ' t="e"', xml: `<v>${escaped(EXCEL_ERRORS[String(value)] ?? String(value))}</v>` };
  if (typeof value === "number") return { type: "", xml: `<v>${value}</v>` };
  if (typeof value === "boolean") return { type: ' t="b"', xml: `<v>${value ? 1 : 0}</v>` };
  if (value === null || (value === "" && texts)) return { type: "", xml: "" };
  if (texts) return { type: ' t="s"', xml: `<v>${texts.indexOf(value)}</v>` };
  return { type: ' t="str"', xml: `<v>${escaped(value)}</v>` };
}

/** The library's own error names, as Excel knows them. */
const EXCEL_ERRORS: Readonly<Record<string, string>> = {
  "#REF": "#REF!",
  "#ERROR": "#VALUE!",
  "#CYCLE": "#VALUE!",
  "#BAD_EXPR": "#NAME?",
  "#SPILL!": "#VALUE!",
};

function filterRange(model: Model, sheetId: string): string | null {
  const zone = model.getters.getCoreTables(sheetId)[0]?.range.zone;
  return zone ? rangeOf(zone) : null;
}

function withFilter(xml: string, range: string | null): string {
  return range === null ? xml : xml.replace("</sheetData>", `</sheetData><autoFilter ref="${range}"/>`);
}

/** A fold's button stands over the column that stays, which is the first of its group; a closed fold is marked there too. */
function withFoldsAtLeft(xml: string): string {
  const isPlain = xml.includes("outlineLevel=") && !xml.includes("<sheetPr");
  if (!isPlain) return xml;
  const left = xml.replace(/<worksheet[^>]*>/, '$&<sheetPr><outlinePr summaryRight="0"/></sheetPr>');
  return left.replace(/<cols>[\s\S]*?<\/cols>/, closedAtLeft);
}

const isTucked = (tag: string | undefined) => tag !== undefined && /outlineLevel=/.test(tag) && /hidden="1"/.test(tag);

/** The library marks a closed fold at the column behind it. */
function closedAtLeft(columns: string): string {
  const tags = [...columns.matchAll(/<col [^>]*\/>/g)].map(([tag]) => tag.replace(' collapsed="1"', ""));
  const marked = tags.map((tag, at) =>
    !isTucked(tag) && isTucked(tags[at + 1]) ? tag.replace("/>", ' collapsed="1"/>') : tag,
  );
  return `<cols>${marked.join("")}</cols>`;
}

const ENTITIES: readonly (readonly [string, string])[] = [
  ["&", "&amp;"],
  ["<", "&lt;"],
  [">", "&gt;"],
  ['"', "&quot;"],
];

function escaped(text: string): string {
  return ENTITIES.reduce((done, [character, entity]) => done.replaceAll(character, entity), text);
}

function unescaped(text: string): string {
  const plain = text.replaceAll("&apos;", "'");
  return [...ENTITIES].reverse().reduce((done, [character, entity]) => done.replaceAll(entity, character), plain);
}
