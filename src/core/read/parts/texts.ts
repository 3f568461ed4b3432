import type { Unit } from "../../quantity/notation/units.js";
import { unitOfHead } from "../layout/heads.js";
import { cellText, type Role } from "../layout/row.js";
import type { ListRecord } from "../records/listRecord.js";
import { readWords } from "../words/readWords.js";
import type { Writing } from "../words/tokens.js";
import type { Words } from "../words/words.js";

/** The words of one cell with the unit of its column's head. */
export type Text = { readonly role: Role | "history"; readonly words: Words; readonly head: Unit | null };

const READ: readonly Role[] = ["value", "description", "rating", "tolerance", "watts", "volts", "remarks", "use"];

/** What a remark says of the part that was there before, or of another set, is not said of this part. */
const HISTORY = /\b(?:was|were|orig\w*|measured|formerly|replaces|version|for the|at TP)\b/i;

/** The words of a record's cells, value first; remarks that tell a history come back with the role "history". */
export function textsOf(record: ListRecord, writing: Writing): Text[] {
  const above = record.heading ? unitOfHeading(record.heading) : null;
  return READ.flatMap((role) =>
    record.cells
      .filter((cell) => cell.role === role && cell.text !== "" && !/^[-–—]+$/.test(cell.text))
      .map((cell) => ({
        role: roleOf(role, cell.text),
        words: readWords(cell.text, writing, role === "value"),
        head: cell.unit ?? (role === "value" || role === "description" ? above : null),
      })),
  );
}

/** Words among figures of watts or volts describe the part ("Mica"); remarks may tell a history. */
function roleOf(role: Role, text: string): Text["role"] {
  if (role === "remarks" && HISTORY.test(text)) return "history";
  return (role === "watts" || role === "volts") && /^[^\d]*[A-Za-z]{4}[^\d]*$/.test(text) ? "description" : role;
}

/** The unit that a heading gives to the bare numbers below it: "CONDENSERS (mfd.)". */
function unitOfHeading(heading: string): Unit | null {
  const [, inner] = /[([]([^)\]]*)[)\]]/.exec(heading) ?? [];
  const unit = inner === undefined ? null : unitOfHead(inner);
  return unit?.measure === "farad" || unit?.measure === "ohm" || unit?.measure === "henry" ? unit : null;
}

/** The texts of some roles, in the order of the roles asked for. */
export function ofRoles(texts: readonly Text[], ...roles: readonly Text["role"][]): Text[] {
  const found: Text[] = [];
  for (const role of roles) for (const text of texts) if (text.role === role) found.push(text);
  return found;
}

/** All that the list prints of a part, cell by cell. */
export const printedText = (record: ListRecord) =>
  record.cells
    .filter((cell) => cell.role !== "item" && cell.role !== "price")
    .map((cell) => cell.text)
    .join("  ");

/** The text of the value cell, or of the description where there is none. */
export const valueText = (record: ListRecord) => cellText(record, "value") || cellText(record, "description");
