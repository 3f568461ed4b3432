import { type Finding, findingsIn, type Kind } from "../../core/index.js";
import type { Case } from "./case.js";
import type { Given } from "./given.js";
import { wordsOf } from "./label.js";
import { stateRead } from "./readings.js";

/** Labels under which a case tells figures and choices in words, none of them a finding. */
const NOT_SEEN =
  /type|kind|taper|speed|policy|rule|mode|series|gate|roles?$|^tol|^tc$|tempco|guard|method|proposed|source|body|\bend$|dot|bands?|colou?r/i;

/**
 * The findings of a case, from its context and the words of its `given`; what a label names stands before its words.
 *
 * What the bench says of the value in a word (open, short) is a reading and no finding.
 */
export function findingsOf(one: Case, { rest }: Given, kind: Kind): readonly Finding[] {
  const labelled = wordedIn(rest, "").flatMap(([key, value]) =>
    NOT_SEEN.test(key) || stateRead(key, value, kind) ? [] : findingsIn(`${wordsOf(key).join(" ")} ${value}`),
  );
  return [...findingsIn(one.context ?? ""), ...labelled];
}

/** Labels with their words, those of a list's rows behind the list's own label: "sections 1 reading", "open". */
function wordedIn(given: object, above: string): readonly (readonly [string, string])[] {
  return Object.entries(given).flatMap(([key, value]: [string, unknown]) => {
    const label = [above, /^\d+$/.test(key) ? String(Number(key) + 1) : key].filter(Boolean).join(" ");
    if (typeof value === "string") return [[label, value] as const];
    return typeof value === "object" && value !== null ? wordedIn(value, label) : [];
  });
}
