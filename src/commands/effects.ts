import { attempt, type PARTS_SHEET, type PartsRow, type RulesInForce, type WorkedOut, workOut } from "../core/index.js";
import { unanswered } from "./fill.js";
import type { ViewRow } from "./openSheet.js";

type PartRow = ViewRow<typeof PARTS_SHEET>;

/** What a change does to one part: what its row says now, and what it will say. Both are the same where it does nothing. */
export type Effect = { readonly row: PartRow; readonly was: string; readonly will: string };

/** What a change alters: the rules in force, or cells of the row. */
export type Altered = { readonly inForce?: RulesInForce; readonly cells?: Partial<PartsRow> };

/**
 * What a change does to a part, before it is written: action, value, watts, volts and technology. What the user typed over stays.
 *
 * @param now The rules in force for the part's set.
 */
export function effectOf(row: PartRow, now: RulesInForce, { inForce = now, cells = {} }: Altered): Effect {
  const base = unanswered(row);
  return { row, was: inOneLine(base, now), will: inOneLine({ ...base, ...cells }, inForce) };
}

/** True where a part's answer changes. */
export const isChange = ({ was, will }: Effect): boolean => was !== will;

const inOneLine = (row: PartsRow, inForce: RulesInForce): string =>
  attempt(
    () => answerText(workOut(row, inForce)),
    ({ message }) => message,
  );

function answerText({ action, newValue, newWatts, newVolts, newType }: WorkedOut): string {
  const figures = [newValue, newWatts && `${newWatts} W`, newVolts && `${newVolts} V`, newType].filter(Boolean);
  return figures.length > 0 ? `${action}: ${figures.join(" ")}` : (action ?? "");
}
