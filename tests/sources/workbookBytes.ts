import { strToU8, zipSync } from "fflate";

const MAIN = 'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"';
const RELATIONS = 'xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"';

/** A workbook of one sheet with these rows of markup; style 1 is a percent, style 2 a date. */
export function workbookBytes(rows: string, strings: readonly string[]): Uint8Array {
  const items = strings.map((text) => `<si>${text.startsWith("<") ? text : `<t>${text}</t>`}</si>`).join("");
  return zipSync({
    "xl/workbook.xml": strToU8(
      `<workbook ${MAIN} ${RELATIONS}><sheets><sheet name="List" r:id="rId1"/></sheets></workbook>`,
    ),
    "xl/_rels/workbook.xml.rels": strToU8(
      `<Relationships><Relationship Id="rId1" Target="worksheets/sheet1.xml"/></Relationships>`,
    ),
    "xl/sharedStrings.xml": strToU8(`<sst ${MAIN}>${items}</sst>`),
    "xl/styles.xml": strToU8(
      `<styleSheet ${MAIN}><numFmts><numFmt numFmtId="164" formatCode="yyyy\\-mm\\-dd"/></numFmts><cellXfs><xf numFmtId="0"/><xf numFmtId="9"/><xf numFmtId="164"/></cellXfs></styleSheet>`,
    ),
    "xl/worksheets/sheet1.xml": strToU8(`<worksheet ${MAIN}><sheetData>${rows}</sheetData></worksheet>`),
  });
}
