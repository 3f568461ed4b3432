import type { Network } from "./network.js";

/** The join that is outermost in a network, and the one inside it. */
export type Joins = { readonly outer: "series" | "parallel"; readonly inner: "series" | "parallel" };

/** Networks that have a series outermost, or the same with series and parallel exchanged. */
export const SIDES: readonly Joins[] = [
  { outer: "series", inner: "parallel" },
  { outer: "parallel", inner: "series" },
];

/** How the parts of a form stand: from letters to a network. */
export type Form = (joins: Joins, parts: readonly number[]) => Network;

const leaf = (part: number): Network => ({ part });
const join = (how: "series" | "parallel", inner: readonly Network[]): Network =>
  how === "series" ? { series: inner } : { parallel: inner };
const leaves = (how: "series" | "parallel", ...parts: number[]) => join(how, parts.map(leaf));

/**
 * One part, and the eight ways in which two to four parts make a network with a given outermost join; with the join exchanged there
 * are 16 in all. The names read as with a series outermost: `a+b` is two in series, `|` is parallel.
 *
 * @see "common practice": the two-terminal series-parallel networks of 2, 3 and 4 parts are 2, 4 and 10
 */
export const FORMS = {
  a: (_, [a]) => leaf(a!),
  "a+b": ({ outer }, [a, b]) => leaves(outer, a!, b!),
  "a+b+c": ({ outer }, [a, b, c]) => leaves(outer, a!, b!, c!),
  "(a|b)+c": ({ outer, inner }, [a, b, c]) => join(outer, [leaves(inner, a!, b!), leaf(c!)]),
  "a+b+c+d": ({ outer }, [a, b, c, d]) => leaves(outer, a!, b!, c!, d!),
  "(a|b)+c+d": ({ outer, inner }, [a, b, c, d]) => join(outer, [leaves(inner, a!, b!), leaf(c!), leaf(d!)]),
  "(a|b)+(c|d)": ({ outer, inner }, [a, b, c, d]) => join(outer, [leaves(inner, a!, b!), leaves(inner, c!, d!)]),
  "(a|b|c)+d": ({ outer, inner }, [a, b, c, d]) => join(outer, [leaves(inner, a!, b!, c!), leaf(d!)]),
  "((a+b)|c)+d": ({ outer, inner }, [a, b, c, d]) =>
    join(outer, [join(inner, [leaves(outer, a!, b!), leaf(c!)]), leaf(d!)]),
} as const satisfies Record<string, Form>;
