import {
  attempt,
  drift,
  driftText,
  fromInWords,
  leadingReasons,
  PARTS_SHEET,
  type PartsRow,
  type Rule,
  type RulesInForce,
  readFrom,
  stagesOf,
  valueRead,
  workOut,
} from "../../core/index.js";

const joined = (words: readonly (string | null | false)[]) => words.filter(Boolean).join(" ");

const withUnit = (figure: number | null, unit: string) => figure !== null && `${figure} ${unit}`;

/** What a part was, in one line. @example "470 k ±20 % 0.5 W Carbon composition resistor" */
export const figuresOf = (row: PartsRow): string =>
  joined([row.value, row.tolerance, withUnit(row.watts, "W"), withUnit(row.volts, "V"), row.type]);

/** What it will be, in one line; empty for a part that stays. */
export const newFigures = (row: PartsRow): string =>
  joined([row.newValue, row.newTolerance, withUnit(row.newWatts, "W"), withUnit(row.newVolts, "V"), row.newType]);

/** What the meter said, and where; "no reading yet" without one. */
export const measuredText = (row: PartsRow): string =>
  row.reading ? joined([row.reading, row.inPlace]) : "no reading yet";

/** How far the reading of a row lies from its printed value; empty where it says nothing of it. @example "+30 %" */
export function offText(row: Pick<PartsRow, "reading" | "value" | "kind" | "size">): string {
  const read = valueRead(row);
  return read === null || !row.size ? "" : driftText(drift({ nominal: row.size, reading: read }));
}

/** How an action leads to the new part, in a few words. */
const LEADS_TO: Readonly<Record<string, string>> = { replace: "replace:", lift: "lift a lead; if it goes:" };

/** What a reading comes to, before it is written. @example "replace: 470 k" */
export const toldText = ({ action, newValue }: Pick<PartsRow, "action" | "newValue">): string =>
  action === "keep" || !newValue ? (action ?? "") : `${LEADS_TO[action ?? ""] ?? `${action}; if it goes:`} ${newValue}`;

const WORDS = { line: "printed", note: "page note", default: "rule", bench: "bench", user: "you" } as const;

/** The heads of figures that a list fills; an answer that stands as a value is told further down the card. */
const PRINTED_HEADS = Object.values(PARTS_SHEET.columns)
  .filter(({ live, head }) => !live && head !== PARTS_SHEET.columns.more.head)
  .map(({ head }) => head);

/** Which figures are from elsewhere than the line. @example "; watts, tolerance: page note, line 6; volts: rule, type Wax paper tubular" */
export function whence(row: PartsRow, rules: readonly Rule[]): string {
  const elsewhere = readFrom(row.from, PRINTED_HEADS).filter((origin) => origin.from !== "line");
  const groups = new Map<string, string[]>();
  for (const { head, from, at } of elsewhere) {
    const name = at ? `${WORDS[from]}, ${fromInWords(rules, at.replace(/^note /, ""))}` : WORDS[from];
    groups.set(name, [...(groups.get(name) ?? []), head]);
  }
  return [...groups].map(([name, heads]) => `; ${heads.join(", ")}: ${name}`).join("");
}

/** Why, in the two reasons that weigh most, and how the new part goes into its room; a reason the user typed stands as it is. */
export function saidOf(
  row: PartsRow,
  inForce: RulesInForce,
): { readonly because: readonly string[]; readonly room: string | null } {
  return attempt(
    () => saidByRules(row, inForce),
    ({ message }) => ({ because: [row.because ?? message], room: null }),
  );
}

function saidByRules(row: PartsRow, inForce: RulesInForce) {
  const stages = stagesOf(row, inForce);
  const { fit } = stages.ratings;
  const isRuled = row.because !== null && row.because === workOut(row, inForce).because;
  const isNew = stages.decision.action !== "keep" && fit;
  return {
    because: isRuled || row.because === null ? leadingReasons(stages) : [row.because],
    room: isNew ? `${fit.fit}, ${fit.because}` : null,
  };
}
