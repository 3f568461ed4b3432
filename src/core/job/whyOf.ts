import { readFrom } from "../present/from.js";
import { headsOf } from "../present/sheet.js";
import { PARTS_SHEET, type PartsRow } from "../present/sheets/parts.js";
import type { RulesInForce } from "../rule.js";
import { stagesOf } from "./workOut.js";

const WHENCE = { line: "printed", note: "page note", default: "rule", bench: "bench", user: "you" } as const;

/**
 * The chain behind a row's answer, sentence by sentence: the facts it rests on, the rules that spoke, what was weighed and
 * turned down.
 */
export function whyOf(row: PartsRow, inForce: RulesInForce): readonly string[] {
  const { rule, decision, ratings } = stagesOf(row, inForce);
  const facts = readFrom(row.from, headsOf(PARTS_SHEET)).map(({ head, text, from, at, sure }) =>
    [`${head} ${text}: ${WHENCE[from]}`, at && `(${at})`, sure && `, ${sure}`].filter(Boolean).join(" "),
  );
  const { classRow, roleRow } = rule;
  return [
    ...facts,
    `type ${classRow.label}: ${classRow.because} [${classRow.source}]`,
    ...(roleRow.id === "general" ? [] : [`used as ${roleRow.label}: ${roleRow.because} [${roleRow.source}]`]),
    `${decision.action}, decided by ${rule.decidedBy.action}, how far to go: ${decision.policy}`,
    ...decision.because,
    ...decision.toRead.map((test) => `to read: ${test}`),
    ...ratings.because,
    ...ratings.rejected.map(({ what, why }) => `not ${what}: ${why}`),
  ];
}
