import { PARTS_SHEET, type PROJECTS_SHEET, type WorkedOut } from "../core/index.js";
import type { Written } from "../hosts/host.js";
import { columnName } from "./a1.js";
import type { View } from "./openSheet.js";

type Parts = typeof PARTS_SHEET;
type Projects = typeof PROJECTS_SHEET;

/** Rows that a formula looks at beyond those filled: ranges in formulas do not grow by themselves in every host. */
const SPARE_ROWS = 400;

/** The keys of the columns of Parts that hold live formulas, in order. */
export const LIVE_KEYS = (Object.keys(PARTS_SHEET.columns) as (keyof WorkedOut)[]).filter(
  (key) => PARTS_SHEET.columns[key].live,
);

/**
 * The formula of a worked-out column of Parts: its head, all heads to the left, the row to the left; one value.
 *
 * @param at The row, from 0.
 * @returns Null where the sheet lacks the column, or it stands first.
 * @example answerFormula(view, "action", 6) // { formula: "=LUG.ANSWER(AC$1,$A$1:$AB$1,$A7:$AB7)" }
 */
export function answerFormula(view: Pick<View<Parts>, "places">, key: keyof Parts["columns"], at: number): Written {
  const place = view.places[key];
  if (place === undefined || place === 0) return null;
  const [own, left, row] = [columnName(place), columnName(place - 1), at + 1];
  return { formula: `=LUG.ANSWER(${own}$1,$A$1:${left}$1,$A${row}:${left}${row})` };
}

/** The formula that fetches a set's rules for a row of Parts, by the set's short name. */
export function rulesFormula(
  parts: Pick<View<Parts>, "places">,
  projects: Pick<View<Projects>, "name" | "places">,
  at: number,
): Written {
  const [set, short, rules] = [parts.places.project, projects.places.short, projects.places.rules];
  if (set === undefined || short === undefined || rules === undefined) return null;
  const range = (column: number) => columnOf(projects.name, columnName(column), columnName(column), SPARE_ROWS);
  const found = `INDEX(${range(rules)},MATCH(${columnName(set)}${at + 1},${range(short)},0))`;
  return { formula: `=IFERROR(${found},"")` };
}

/** A whole sheet as a formula looks at it. */
type Whole = { readonly name: string; readonly heads: readonly string[] };

/** The formula that writes the rules in force for a set's row: what differs from the defaults, as one text. */
export function rulesInForceFormula(
  projects: Pick<View<Projects>, "places">,
  sheets: { readonly rules: Whole; readonly settings: Whole },
  at: number,
): Written {
  const place = projects.places.rules;
  if (place === undefined || place === 0) return null;
  const whole = ({ name, heads }: Whole) => columnOf(name, "A", columnName(heads.length - 1), SPARE_ROWS);
  const [left, row] = [columnName(place - 1), at + 1];
  const own = `$A$1:$${left}$1,$A${row}:$${left}${row}`;
  return { formula: `=LUG.RULES_IN_FORCE(${whole(sheets.rules)},${whole(sheets.settings)},${own})` };
}

function columnOf(sheet: string, first: string, last: string, rows: number): string {
  const name = /^[A-Za-z_]\w*$/.test(sheet) ? sheet : `'${sheet.replaceAll("'", "''")}'`;
  return `${name}!$${first}$1:$${last}$${rows}`;
}
