/**
 * How we know a value: printed on the line, in a note of the document, from a default rule, read on the bench, or said by the user.
 */
export type From = "line" | "note" | "default" | "bench" | "user";

/** How sure we are of something that was worked out from words, value and era, as a person would say it. */
export type Sure = "sure" | "likely" | "a guess";

/**
 * A value and how we know it.
 *
 * `at` says where to look: "line 14", "note 2", a rule's id, a reading's number. `sure` stands where the value was worked
 * out and not stated.
 */
export type Fact<T> = { readonly value: T; readonly from: From; readonly at: string; readonly sure?: Sure };

/** A fact that was printed, ruled or said. @example fact(0.5, "note", "note 2") */
export function fact<T>(value: T, from: From, at: string): Fact<T> {
  return { value, from, at };
}

const AUTHORITY: readonly From[] = ["default", "note", "line", "bench", "user"];

/** The fact that outranks the other: the user over the bench, the bench over print, a printed line over a note, a note over a default. */
export function outranking<T>(a: Fact<T> | null, b: Fact<T> | null): Fact<T> | null {
  if (!a || !b) return a ?? b;
  return AUTHORITY.indexOf(a.from) >= AUTHORITY.indexOf(b.from) ? a : b;
}
