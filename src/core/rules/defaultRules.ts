import type { Rule, RulesInForce } from "../rule.js";
import { ELECTROLYTIC_OIL_CLASSES } from "./electrolyticOilClasses.js";
import { OTHER_CLASSES } from "./otherClasses.js";
import { PAPER_MICA_CERAMIC_CLASSES } from "./paperMicaCeramicClasses.js";
import { RESISTOR_CLASSES } from "./resistorClasses.js";
import { ROLES } from "./roles.js";
import { fullRule } from "./ruleRow.js";
import { defaultSettings } from "./settings.js";

const CLASSES = [
  ...RESISTOR_CLASSES,
  ...PAPER_MICA_CERAMIC_CLASSES,
  ...ELECTROLYTIC_OIL_CLASSES,
  ...OTHER_CLASSES,
] as const;

const ALL: readonly Rule[] = [
  ...CLASSES.map((row) => fullRule("class", row)),
  ...ROLES.map((row) => fullRule("role", row)),
];

/** The rule rows that stand before anybody edits them: 49 classes of part and 30 roles. @example defaultRules().length // 79 */
export function defaultRules(): readonly Rule[] {
  return ALL;
}

/** The default rules and settings together, as every stage takes them. */
export const DEFAULTS_IN_FORCE: RulesInForce = { rules: ALL, settings: defaultSettings };
