/** Something seen, heard or smelt on a part, in the words it was told in; `bad` false is "looks and works well". */
export type SaidFinding = { readonly text: string; readonly bad: boolean };

/** What tells of a bad part: on its body, in its sound, in what it does. Common practice. */
const BAD =
  /crack(ed|s|ing)?\b|burn(t|ed)|charred|scorched|swollen|bulg|corro|green|crackl|nois[ey]|leak(y|s|ing)\b|seep|crust|blown|broken|dead spot|intermittent|erratic|frayed|perished|brittle|shorted|melted|track(s|ing|ed)?\b|arc(s|ed|ing)\b|microphonic|(reads?|is|to|a|dead) (a )?short\b|\bopen\b|\bbad\b|faulty|defective|\bweak\b|loose|(beyond|outside|out of) (its|the|a)?\s*[\w'’]*\s*(limit|class|tolerance|calibration)|dead\b|\bgone\b|will not (start|light|strike)|does(n.t| not) (start|light|strike|work)|fail(s|ed)?\b|smell|foul|touch(es|ing)? (at|over)/i;
const GOOD =
  /tests? (good|ok|fine)|works|reads (true|good)|\bsound\b|lights\b|looks (good|sound)|pass(es|ed)\b|\bgood\b|\bok\b/i;
const DENIED = /\b(no|not|without|never|nothing|neither|isn.t)\b[^.;,]{0,20}$/i;
/** Words in which "green", "open", "short" or "track" are no finding. */
const HARMLESS =
  /open.?circuit volts|short (wave|leads?)|sound output|sound (detector|if)|dead set|green (wire|band|lead|bead|dot)|noise (filter|limiter)|good (for|to)\b|\b(from|to|on|at|of) (the )?open/gi;

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
    .split(/[;.,]\s/)
    .flatMap((clause): SaidFinding[] => {
      const bad = BAD.exec(clause);
      if (bad && !DENIED.test(clause.slice(0, bad.index))) return [{ text: clause.trim(), bad: true }];
      return GOOD.test(clause) ? [{ text: clause.trim(), bad: false }] : [];
    });
}
