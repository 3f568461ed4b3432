import { cautionsOf } from "../decide/cautionsOf.js";
import { type Columns, writeCell } from "../present/sheet.js";
import { RULES_SHEET } from "../present/sheets/rulebook.js";
import { fromInWords, idOfLabel } from "../present/typeNames.js";
import { PartsError } from "../problem.js";
import { writeTolerance } from "../quantity/tolerance.js";
import type { RulesInForce } from "../rule.js";
import { CAUTIONS } from "../rules/cautions.js";
import { classRuleFor, ROLE_COLUMNS, type RuleFor, rowName, ruleFor } from "../rules/ruleFor.js";
import { POLICY_WORDS, TECHNOLOGY_WORDS, wordFor } from "../rules/ruleWords.js";
import type { Cell } from "../table.js";
import { typeNamed } from "./whatToFit.js";

/** How the sheet Rules words each column. */
const COLUMNS: Columns = RULES_SHEET.columns;

/** The rule for a type and a use, each by id or label. */
function found(type: string, usedAs: string | null, inForce: RulesInForce): RuleFor {
  const className = typeNamed(type, inForce.rules) ?? type;
  const role = usedAs === null ? null : (idOfLabel(inForce.rules, "role", usedAs) ?? usedAs);
  return ruleFor(inForce, className, role);
}

/**
 * The rule that holds, as rows of column, what it says, and the row that decided it.
 *
 * @throws PartsError "unknown-name" for a type or use that no rule has.
 * @example ruleTable("paper_wax", "line_to_chassis", DEFAULTS_IN_FORCE)[0] // ["action", "replace", "use One side of line to chassis or ground"]
 */
export function ruleTable(type: string, usedAs: string | null, inForce: RulesInForce): readonly (readonly Cell[])[] {
  const rule = found(type, usedAs, inForce);
  const rows = [rule.classRow, rule.roleRow];
  const by = (column: string) => fromInWords(rows, rule.decidedBy[column] ?? "");
  const columns = ROLE_COLUMNS.flatMap((key): Cell[][] => {
    const column = COLUMNS[key]!;
    return rule[key] === null ? [] : [[column.head, writeCell(column, rule[key]), by(key)]];
  });
  return [
    ["action", rule.action, by("action")],
    ["how far to go", POLICY_WORDS[rule.policy], "settings"],
    ["types of new part", rule.technologies.map((id) => wordFor(TECHNOLOGY_WORDS, id)).join(", "), by("technologies")],
    ...columns,
    ["because", rows.map(({ because }) => because).join("; "), "both rows"],
    ["source", rule.classRow.source, fromInWords(rows, rowName(rule.classRow))],
  ];
}

/**
 * What to watch for with a part of a type in a use: rows of level and text, stops first.
 *
 * @throws PartsError "unknown-name" for a type or use that no rule has.
 * @example cautionTable("fuse", null, DEFAULTS_IN_FORCE)[0] // ["stop", "Same current and same speed as documented."]
 */
export function cautionTable(type: string, usedAs: string | null, inForce: RulesInForce): readonly (readonly Cell[])[] {
  return cautionsOf(found(type, usedAs, inForce), "replace").flatMap((id) => {
    const caution = CAUTIONS.find((each) => each.id === id);
    return caution ? [[caution.level, caution.text]] : [];
  });
}

/**
 * What stands in for a figure that a list leaves unsaid: watts and volts as numbers, a tolerance as text, null where the
 * rule says nothing.
 *
 * @throws PartsError "unknown-name" for another figure, or a type that no rule has.
 * @example unstatedFigure("carbon_comp", "tolerance", DEFAULTS_IN_FORCE) // "±20 %"
 */
export function unstatedFigure(type: string, figure: string, inForce: RulesInForce): Cell {
  const classRow = classRuleFor(inForce, typeNamed(type, inForce.rules) ?? type);
  if (figure === "watts") return classRow.unstatedWatts;
  if (figure === "volts") return classRow.unstatedVolts;
  if (figure !== "tolerance") throw new PartsError("unknown-name", figure, "Ask for tolerance, watts or volts.");
  const { unstatedLow, unstatedHigh } = classRow;
  return unstatedLow === null || unstatedHigh === null
    ? null
    : writeTolerance({ minus: -unstatedLow, plus: unstatedHigh });
}
