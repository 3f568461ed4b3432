import type { Finding } from "../../core/index.js";
import type { Case } from "./case.js";

/** What is seen, heard or smelt, as a case's context or condition says it. */
const BAD =
  /crack(ed|s|ing)?\b|burn(t|ed)|charred|scorched|swollen|bulg|corro|green|crackl|nois[ey]|leak(y|ing)|seep|crust|blown|broken|dead spot|intermittent|erratic|frayed|perished|brittle|shorted|melted|track(s|ing|ed)?\b|arc(s|ed|ing)\b|microphonic|(reads?|is|to) (a )?short\b|\bopen\b|(beyond|outside|out of) (its|the|a)?\s*[\w'’]*\s*(limit|class|tolerance|calibration)|dead\b|will not (start|light|strike)|fails?\b|smell|foul/i;
const GOOD = /tests? (good|ok|fine)|works|reads (true|good)|sound\b|lights\b|looks (good|sound)|passes/i;
const DENIED = /\b(no|not|without|never|nothing|neither)\b[^.;,]{0,20}$/i;
/** Words in which "green", "open" or "track" are no finding. */
const HARMLESS =
  /open.?circuit volts|sound output|sound (detector|if)|dead set|green (wire|band|lead|bead)|noise (filter|limiter)/gi;

/** The findings of a case, from its context and the words of its `given`. */
export function findingsOf(one: Case): readonly Finding[] {
  const { condition, state, look, finding, found, seen, inspection, note } = one.given ?? {};
  const texts = [one.context, condition, state, look, finding, found, seen, inspection, note].filter(
    (text) => typeof text === "string",
  );
  return texts.flatMap((text) =>
    (text as string)
      .replace(HARMLESS, "")
      .split(/[;.,]\s/)
      .flatMap((clause): Finding[] => {
        const bad = BAD.exec(clause);
        if (bad && !DENIED.test(clause.slice(0, bad.index))) return [{ text: clause.trim(), bad: true }];
        return GOOD.test(clause) ? [{ text: clause.trim(), bad: false }] : [];
      }),
  );
}
