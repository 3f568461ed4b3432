import type { Network } from "./network.js";

/** How the members of the outermost group of a network are joined. */
export type Join = "series" | "parallel";

/** Both ways to join, and so both sides from which a form can be read. */
export const JOINS: readonly Join[] = ["series", "parallel"];

/** A network without its parts: their numbers, from 0, in groups; each group inside another is joined the other way. */
export type Form = readonly (number | Form)[];

/**
 * One part, and the eight ways in which two to four parts make a network with a given outermost join; with the join exchanged there
 * are 16 in all. The names read as with a series outermost: `a+b` is two in series, `|` is parallel.
 *
 * @see "common practice": the two-terminal series-parallel networks of 2, 3 and 4 parts are 2, 4 and 10
 */
export const FORMS = {
  a: [0],
  "a+b": [0, 1],
  "a+b+c": [0, 1, 2],
  "(a|b)+c": [[0, 1], 2],
  "a+b+c+d": [0, 1, 2, 3],
  "(a|b)+c+d": [[0, 1], 2, 3],
  "(a|b)+(c|d)": [
    [0, 1],
    [2, 3],
  ],
  "(a|b|c)+d": [[0, 1, 2], 3],
  "((a+b)|c)+d": [[[0, 1], 2], 3],
} as const satisfies Record<string, Form>;

/** The network that a form makes of parts, with this join outermost. @example networkFrom([0, 1], "series", [100, 220]) */
export function networkFrom<P>(form: Form, outer: Join, parts: readonly P[]): Network<P> {
  const inner = outer === "series" ? "parallel" : "series";
  const members = form.map((one) => (typeof one === "number" ? { part: parts[one]! } : networkFrom(one, inner, parts)));
  if (members.length === 1) return members[0]!;
  return outer === "series" ? { series: members } : { parallel: members };
}
