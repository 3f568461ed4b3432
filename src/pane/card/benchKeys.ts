/** Keys beside the figures on a number pad; none is a unit's letter. */
export const BENCH_KEYS = { lift: "*", state: "/", next: "+", back: "-" } as const;

/** What the state key goes through: readings that are no figures. */
const STATES = ["", "open", "short", "jumps"];

/** The next of open, short, jumps and nothing. @example nextState("open") // "short" */
export const nextState = (typed: string): string =>
  STATES[(STATES.indexOf(typed.trim().toLowerCase()) + 1) % STATES.length]!;

/** True where the state key may act: nothing stands there, or one of its own words. */
export const isState = (typed: string): boolean => STATES.includes(typed.trim().toLowerCase());

const plain = (name: string | null) => (name ?? "").replace(/[-\s]/g, "").toUpperCase();

/**
 * The row that a typed designator names; a figure alone keeps the letters of the part before, so that one hand is enough.
 *
 * @example namedRow("12", rows, "R7") // the row of R12
 */
export function namedRow<R extends { readonly values: { readonly designator: string | null } }>(
  typed: string,
  rows: readonly R[],
  before: string | null,
): R | null {
  const letters = /^[A-Z]*/.exec(plain(before))![0];
  const names = [plain(typed), `${letters}${plain(typed)}`];
  return names.flatMap((name) => rows.find(({ values }) => plain(values.designator) === name) ?? [])[0] ?? null;
}
