import type { Kind, ValueState, Warning } from "../../part.js";
import { MEASURE_OF } from "./context.js";
import { ofRoles, type Text } from "./texts.js";

/** What words, not figures, say of a part's value: not fitted, or selected in test; null where they say nothing. */
export function stateOf(texts: readonly Text[]): ValueState | null {
  for (const { role, words } of texts) {
    for (const meaning of role === "use" || role === "history" ? [] : words.meanings) {
      if (meaning.field !== "mark") continue;
      if (meaning.value === "selected") return "selected-in-test";
      const isFirst = meaning.from === (/^(?:is|are|was)$/.test(words.tokens[0]!.key) ? 1 : 0);
      const isUnit = words.amounts.some((amount) => amount.from < meaning.from && meaning.from < amount.to);
      const isAlone = (isFirst || role === "value") && !isUnit;
      if (meaning.value === "not-fitted" && isAlone) return "not-fitted";
      if (meaning.value === "nominal" && role === "value" && words.amounts.length === 0) return "selected-in-test";
    }
  }
  return null;
}

const LOST = /[■□?~]|,\s*[.;,]+\s*[.;,~]/;
const LONE_UNIT = /(?:^|[\s,;:])(?:ohms?|meg|mfd?|mmfd?|uu?f)\b/i;

/** A value whose figures are gone: a unit without number, or blots where the number stood; null where none is. */
export function lostFigure(texts: readonly Text[], kind: Kind): Warning | null {
  const own = ofRoles(texts, "value", "description");
  const isLost =
    MEASURE_OF[kind] !== undefined &&
    own.some(({ words }) => LOST.test(words.text) || (words.amounts.length === 0 && LONE_UNIT.test(words.text)));
  return isLost ? { code: "unreadable", text: `the figures of the value are gone: "${own[0]!.words.text}"` } : null;
}
