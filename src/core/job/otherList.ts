import { type Fact, fact } from "../fact.js";
import type { Part } from "../part.js";
import { type OtherSays, readOtherList, type Saying } from "../present/otherList.js";

/** The ratings of which the safer one of two lists is taken: the higher. */
const RATINGS = ["watts", "volts"] as const;
type Rating = (typeof RATINGS)[number];

/** A part with the safer ratings of all its lists, and the reasons. */
export type WithOtherList = { readonly part: Part; readonly because: readonly string[] };

/**
 * A part as all its lists have it: of watts and volts that two lists state differently, the higher is taken, unless the user
 * typed the figure or left the other list's aside. What else they say differently is a reason to look, and changes nothing.
 *
 * @param cell What other lists say, as the row of Parts holds it.
 * @example withOtherList(part, "HL-40: watts 2 W").part.watts // { value: 2, from: "line", at: "HL-40 in the other list" }
 */
export function withOtherList(part: Part, cell: string | null): WithOtherList {
  const others = readOtherList(cell);
  const taken = RATINGS.flatMap((rating) => {
    const found = saferOf(part[rating], rating, others);
    return found ? [[rating, found] as const] : [];
  });
  return {
    part: { ...part, ...Object.fromEntries(taken) },
    because: others.flatMap((other) => reasonsOf(part, other)),
  };
}

/** The highest figure that other lists state, where it outranks the part's own; null where its own stands. */
function saferOf(own: Fact<number> | null, rating: Rating, others: readonly OtherSays[]): Fact<number> | null {
  if (own?.from === "user") return null;
  const stated = others.flatMap(({ id, says }) =>
    says.flatMap((saying) => (saying.field === rating && !saying.leftAside ? [{ id, figure: figureOf(saying) }] : [])),
  );
  const [most] = stated.sort((a, b) => b.figure - a.figure);
  if (!most || !isSafer(most.figure, own)) return null;
  return fact(most.figure, "line", `${most.id} in the other list`);
}

/** A figure that a list states stands before a default; of two that are stated the higher is safer. */
const isSafer = (figure: number, own: Fact<number> | null) =>
  figure > 0 && (own === null || own.from === "default" || figure > own.value);

const figureOf = ({ text }: Saying) => Number.parseFloat(text) || 0;

function reasonsOf(part: Part, { id, says }: OtherSays): readonly string[] {
  return says.map((saying) => {
    const said = `${id} in the other list says ${saying.field} ${saying.text}`;
    const rating = RATINGS.find((each) => each === saying.field);
    if (saying.leftAside) return `${said}, left aside by you`;
    if (!rating) return said;
    const own = part[rating];
    if (own?.from === "user") return `${said}; yours stands`;
    if (own === null || own.from === "default") return `${said}, this list nothing`;
    return isSafer(figureOf(saying), own) ? `${said}, the safer of the two` : said;
  });
}
