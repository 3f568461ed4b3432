import type { Finding } from "../../core/index.js";
import type { Case } from "./case.js";

/** What is seen, heard or smelt, as a case's context or condition says it. */
const BAD =
  /crack(ed|s)?\b|burn(t|ed)|charred|swollen|bulg|corro|green|crackl|nois[ey]|leak(y|ing)|seep|crust|blown|broken|dead spot|intermittent|erratic|frayed|shorted|(reads?|is|to) (a )?short\b|\bopen\b/i;
const GOOD = /tests? (good|ok)|works|reads (true|good)|sound\b/i;
const DENIED = /\b(no|not|without|never)\b[^.;,]{0,20}$/i;

/** The findings of a case, from its context and the words of its `given`. */
export function findingsOf(one: Case): readonly Finding[] {
  const { condition, state, look, finding, found } = one.given ?? {};
  const texts = [one.context, condition, state, look, finding, found].filter((text) => typeof text === "string");
  return texts.flatMap((text) =>
    (text as string).split(/[;.,]/).flatMap((clause): Finding[] => {
      const bad = BAD.exec(clause);
      if (bad && !DENIED.test(clause.slice(0, bad.index))) return [{ text: clause.trim(), bad: true }];
      return GOOD.test(clause) ? [{ text: clause.trim(), bad: false }] : [];
    }),
  );
}
