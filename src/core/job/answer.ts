import { networkValue } from "../compose/network.js";
import { readNetwork } from "../compose/networkText.js";
import { kindNamed } from "../part.js";
import { rulesOfText } from "../present/rulesText.js";
import { placesOf, rowsOf } from "../present/sheet.js";
import { PARTS_SHEET, type PartsRow } from "../present/sheets/parts.js";
import { attempt, PartsError } from "../problem.js";
import type { Cell } from "../table.js";
import { type WorkedOut, workOut } from "./workOut.js";

/**
 * The value of one worked-out column of Parts, from its head and all that stands to its left.
 *
 * What is typed over to the left counts as it stands, so that an answer of the user's flows on to the right.
 *
 * @param head The column's own head: "action".
 * @param heads The heads to the left, in any order.
 * @param cells The row's cells under them.
 * @throws PartsError "unknown-name" for a head that is not worked out; what the stages throw for a row they can't read.
 * @example answer("new watts", ["printed", "kind", "value", "watts", "type"], ["470K", "resistor", "470 k", 0.5, "Carbon composition resistor"]) // 1
 */
export function answer(head: string, heads: readonly Cell[], cells: readonly Cell[]): Cell {
  const key = Object.keys(placesOf(PARTS_SHEET, [head]))[0] as keyof PartsRow | undefined;
  if (!key || !PARTS_SHEET.columns[key].live) {
    const names = Object.values(PARTS_SHEET.columns).flatMap((each) => (each.live ? [each.head] : []));
    throw new PartsError("unknown-name", head, `Use one of: ${names.join(", ")}.`);
  }
  const row = rowsOf(PARTS_SHEET, { heads: heads.map((each) => String(each ?? "")), rows: [cells] })[0]!;
  if (row.designator === null && row.value === null && row.printed === null) return null;
  const said = ruledOrTyped(row);
  const isTypedValue = row.newValue !== null && row.newValue !== said.newValue;
  return key === "newSize" && isTypedValue ? sizeOf(row) : said[key as keyof WorkedOut];
}

/** What a new value that the user typed comes to, made up or not; nothing where it is no value. */
function sizeOf({ newValue, kind }: PartsRow): number | null {
  const known = kindNamed(kind);
  return attempt(() => networkValue(readNetwork(newValue ?? "", known), known));
}

/**
 * Rows worked out before, by all that was given: each row is asked for once a column. Forgotten when there are more than the
 * longest list has, for a sheet asks down one column after the other.
 */
const memo = new Map<string, WorkedOut>();
const MOST = 30_000;

/** What the rules say of a row, worked out once; worked out anew where a verdict or an action of it is the user's. */
function ruledOrTyped(row: PartsRow): WorkedOut {
  const given = Object.entries(row).filter(
    ([key, cell]) => cell !== null && !PARTS_SHEET.columns[key as keyof PartsRow].live,
  );
  const name = JSON.stringify(given);
  const ruled = memo.get(name) ?? workOut({ ...row, verdict: null, action: null }, rulesOfText(row.rules));
  if (memo.size >= MOST) memo.clear();
  memo.set(name, ruled);
  const isTheirs = (key: "verdict" | "action") => row[key] !== null && row[key] !== ruled[key];
  return isTheirs("verdict") || isTheirs("action") ? workOut(row, rulesOfText(row.rules)) : ruled;
}
