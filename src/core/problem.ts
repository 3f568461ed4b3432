/**
 * Anything we could not do, as data; the text is made last, in one table.
 *
 * `given` is what came in, `wanted` is what would have worked, `at` is where it stood ("line 14", "argument 2").
 */
export type Problem = {
  readonly code: ProblemCode;
  readonly given: string;
  readonly wanted: string;
  readonly at: string;
};

/** What can go wrong, by name. Unreadable input shows as #VALUE! in a cell, nothing found as #N/A. */
export type ProblemCode =
  | "unreadable"
  | "out-of-range"
  | "unknown-name"
  | "nothing-fits"
  | "none-within"
  | "too-much"
  | "not-a-list"
  | "conflict";

const TEXTS: Record<ProblemCode, (p: Problem) => string> = {
  unreadable: (p) => `Can't read "${p.given}". ${p.wanted}`,
  "out-of-range": (p) => `${p.given} is outside what is possible. ${p.wanted}`,
  "unknown-name": (p) => `"${p.given}" is not known. ${p.wanted}`,
  "nothing-fits": (p) => `Nothing fits ${p.given}. ${p.wanted}`,
  "none-within": (p) => `None within ${p.given}. ${p.wanted}`,
  "too-much": (p) => `${p.given} is more than can be done here. ${p.wanted}`,
  "not-a-list": (p) => `No parts were found in ${p.given}. ${p.wanted}`,
  conflict: (p) => `${p.given} exclude each other. ${p.wanted}`,
};

/** The problem as a sentence: what was given, then what would have worked. */
export function problemText(problem: Problem): string {
  const place = problem.at ? `${problem.at}: ` : "";
  return (place + TEXTS[problem.code](problem)).trim();
}

/** The only error the core raises on purpose. Leaves throw it, row loops collect it, hosts translate it. */
export class PartsError extends Error {
  readonly problem: Problem;

  constructor(code: ProblemCode, given: unknown, wanted: string, at = "") {
    const problem: Problem = { code, given: typeof given === "string" ? given : String(given), wanted, at };
    super(problemText(problem));
    this.name = "PartsError";
    this.problem = problem;
  }
}

/**
 * What the work gives, or what stands instead where it ends in a problem: null where nothing is said. Any other error goes on.
 *
 * @example attempt(() => readTolerance("?")) // null
 */
export function attempt<T, F = null>(work: () => T, instead: (error: PartsError) => F = () => null as F): T | F {
  try {
    return work();
  } catch (error) {
    if (error instanceof PartsError) return instead(error);
    throw error;
  }
}
