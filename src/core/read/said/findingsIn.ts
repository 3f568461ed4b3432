/** Something seen, heard or smelt on a part, in the words it was told in; `bad` false is "looks and works well". */
export type SaidFinding = { readonly text: string; readonly bad: boolean };

/** What tells of a bad part, as patterns of words. Common practice. */
const SIGNS: Readonly<Record<string, string>> = {
  "on its body":
    "crack(ed|s)?\\b|burn(t|ed)|charred|scorched|blackened|blistered|swollen|bulg|corro|green|verdigris|seep|crust|melted|frayed|perished|brittle|track(s|ing|ed)?\\b|loose|chipped|broken",
  "heard and smelt": "crackl|nois[ey]|hiss(es|ing)|pops\\b|microphonic|arc(s|ed|ing)\\b|smell|foul|smok",
  "on the meter":
    "leak(y|s|ing)\\b|shorted|(reads?|is|to|a|dead|shows?) (a )?short\\b|\\bopen\\b|(reads?|shows?) (ol|o\\.l\\.|over.?range|infinity|nothing)\\b|no continuity|dead spot|intermittent|erratic|jumps|(beyond|outside|out of) (its|the|a)?\\s*[\\w'’]*\\s*(limit|class|tolerance|calibration)",
  "in a word":
    "\\bbad\\b|faulty|defective|\\bweak\\b|blown|dead\\b|\\bgone\\b|will not (start|light|strike)|does(n.t| not) (start|light|strike|work)|fail(s|ed)?\\b|touch(es|ing)? (at|over)",
};
const BAD = new RegExp(Object.values(SIGNS).join("|"), "i");
const GOOD =
  /tests? (good|ok|fine)|works|reads (true|good)|\bsound\b|lights\b|looks (good|sound)|pass(es|ed)\b|\bgood\b|\bok\b/i;
const DENIED = /\b(no|not|without|never|nothing|neither|isn.t)\b[^.;,]{0,20}$/i;
/** Words in which "green", "open", "short" or "track" are no finding; a diode is to be open in reverse. */
const HARMLESS =
  /open.?circuit volts|open (in reverse|the other way|the other direction|backwards?)|short (wave|leads?)|sound output|sound (detector|if)|dead set|green (wire|band|lead|bead|dot)|noise (filter|limiter)|good (for|to)\b|\b(from|to|on|at|of) (the )?open/gi;

/**
 * The findings that a free text tells, clause by clause: "crackles; no green at its ends" is one that is bad.
 *
 * Clauses that deny what would be bad ("no corrosion") tell nothing of their own, nor does a clause without a finding.
 *
 * @example findingsIn("insulation to case bad")[0]?.bad // true
 */
export function findingsIn(text: string): readonly SaidFinding[] {
  return text
    .replace(HARMLESS, "")
    .split(/[;.,](?:\s|$)/)
    .flatMap((clause): SaidFinding[] => {
      const bad = BAD.exec(clause);
      if (bad && !DENIED.test(clause.slice(0, bad.index))) return [{ text: clause.trim(), bad: true }];
      return GOOD.test(clause) ? [{ text: clause.trim(), bad: false }] : [];
    });
}
