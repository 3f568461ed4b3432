import type { Verdict } from "../measure/verdict.js";
import type { Action, Policy } from "../rule.js";
import type { Judged } from "./reading.js";

/**
 * What is to be done with an old part, and why.
 *
 * `rule` names the row that decided, `policy` the one in force (it stays on record); `verdict` is what the readings say
 * together, null where there is none; `leads` is the one reason that decided, `because` all of them; `drift` how far the value read lies off; `toRead` what would settle it; `cautions`
 * are ids, stops first.
 */
export type Decision = {
  readonly action: Action;
  readonly policy: Policy;
  readonly rule: string;
  readonly verdict: Verdict | null;
  readonly drift: number | null;
  readonly judged: readonly Judged[];
  readonly leads: string;
  readonly because: readonly string[];
  readonly toRead: readonly string[];
  readonly cautions: readonly string[];
};
