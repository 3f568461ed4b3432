import { rulesInForceText } from "../core/index.js";
import { cell, plainRows } from "./cell.js";

/**
 * The rules in force for one set as a text (no unit) that other functions take: what differs from the defaults, a line each.
 * @customfunction RULES_IN_FORCE
 * @helpurl reference.html#RULES_IN_FORCE
 * @param rules The sheet Rules with its heads.
 * @param settings The sheet Settings with its heads.
 * @param heads The heads of the set's row in Projects; may be left out.
 * @param project The set's row in Projects; may be left out.
 * @returns Empty where nothing differs from the defaults.
 * @example LUG.RULES_IN_FORCE("", "", {"how far to go"}, {"test first, keep what passes"}) -> "policy = conservator"
 */
export function rulesInForce(
  rules: unknown[][],
  settings: unknown[][],
  heads?: unknown[][],
  project?: unknown[][],
): unknown[][] {
  return cell(() =>
    rulesInForceText(plainRows(rules), plainRows(settings), plainRows(heads)[0]!, plainRows(project)[0]!),
  );
}
