import { PartsError } from "../problem.js";
import type { Rule, RulesInForce } from "../rule.js";
import { DEFAULTS_IN_FORCE } from "../rules/defaultRules.js";
import type { Cell } from "../table.js";
import { rowOfRule, ruleOfRow } from "./ruleRow.js";
import { cellsOf, headsOf, rowsOf } from "./sheet.js";
import { RULES_SHEET } from "./sheets/rulebook.js";

const HEADS = headsOf(RULES_SHEET);
const ENTRY = /^(class|role) (\w+): (.*)$/s;
const SETTING = /^(\w+) = (.*)$/s;

const nameOf = ({ scope, id }: Pick<Rule, "scope" | "id">) => `${scope} ${id}`;

const cellsOfRule = (rule: Rule): readonly Cell[] => cellsOf(RULES_SHEET, rowOfRule(rule));

const BLANK_RULE: readonly Cell[] = HEADS.map(() => null);

const oneLine = (cell: Cell | undefined) => String(cell ?? "").replace(/\s*[\n|]\s*/g, " ");

/**
 * The rules in force as one text that a cell holds and a person can read: what differs from the defaults, a line each.
 *
 * @example rulesText(inForce) // "policy = conservator\nclass carbon_comp: drift limit = 0.3"
 */
export function rulesText(inForce: RulesInForce): string {
  const defaults = DEFAULTS_IN_FORCE;
  const settings = Object.entries(inForce.settings)
    .filter(([key, value]) => String(defaults.settings[key] ?? "") !== String(value))
    .map(([key, value]) => `${key} = ${value}`);
  const names = new Set(inForce.rules.map(nameOf));
  const off = defaults.rules.filter((rule) => !names.has(nameOf(rule))).map((rule) => `${nameOf(rule)}: off`);
  const changed = inForce.rules.flatMap((rule) => {
    const usual = defaults.rules.find((each) => nameOf(each) === nameOf(rule));
    const was = usual ? cellsOfRule(usual) : BLANK_RULE;
    const columns = cellsOfRule(rule).flatMap((cell, at) =>
      oneLine(cell) === oneLine(was[at]) || at < 2 ? [] : [`${HEADS[at]} = ${oneLine(cell)}`],
    );
    return columns.length > 0 ? [`${nameOf(rule)}: ${columns.join(" | ")}`] : [];
  });
  return [...settings, ...changed, ...off].join("\n");
}

/**
 * The rules that such a text puts in force; nothing, or an empty text, means the defaults.
 *
 * @throws PartsError "unreadable" for a line that is neither a setting nor a rule.
 */
export function rulesOfText(text: string | null): RulesInForce {
  const lines = (text ?? "").split("\n").filter((line) => line.trim() !== "");
  if (lines.length === 0) return DEFAULTS_IN_FORCE;
  const settings: Record<string, number | string> = { ...DEFAULTS_IN_FORCE.settings };
  const rules = new Map(DEFAULTS_IN_FORCE.rules.map((rule) => [nameOf(rule), rule]));
  for (const line of lines) {
    const [, scope, id, columns] = ENTRY.exec(line) ?? [];
    const [, key, value] = SETTING.exec(line) ?? [];
    if (scope && id) applyRule(rules, scope, id, columns ?? "");
    else if (key && value !== undefined) settings[key] = Number.isNaN(Number(value)) ? value : Number(value);
    else throw new PartsError("unreadable", line, "Give the text that RULES_IN_FORCE writes.");
  }
  return { rules: [...rules.values()], settings };
}

function applyRule(rules: Map<string, Rule>, scope: string, id: string, columns: string): void {
  const name = `${scope} ${id}`;
  if (columns === "off") {
    rules.delete(name);
    return;
  }
  const usual = rules.get(name);
  const cells = [...(usual ? cellsOfRule(usual) : BLANK_RULE)];
  [cells[0], cells[1]] = [scope, id];
  for (const column of columns.split(" | ")) {
    const [head, ...rest] = column.split(" = ");
    const at = HEADS.indexOf(head ?? "");
    const value = rest.join(" = ");
    if (at < 0) throw new PartsError("unreadable", column, "Give the text that RULES_IN_FORCE writes.");
    cells[at] = value === "" ? null : value;
  }
  const rule = ruleOfRow(rowsOf(RULES_SHEET, { heads: HEADS, rows: [cells] })[0]!);
  if (rule) rules.set(name, rule);
}
