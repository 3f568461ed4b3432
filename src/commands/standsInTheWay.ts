import { type DemandLine, easings, matchOffers, TECHNOLOGIES } from "../core/index.js";
import type { Wants } from "./orderBook.js";

/** A want that nothing fits: the ids of its parts, what is wanted, and what stands in the way. */
export type InTheWay = { readonly ids: readonly string[]; readonly what: string; readonly why: string };

/** Every want that no offer fits: the one limit whose easing would let something in, or what the nearest miss lacks. */
export const standsInTheWay = (wants: Wants): readonly InTheWay[] =>
  wants.lines.filter(({ matches }) => matches.length === 0).map((line) => inTheWay(line, wants));

/** What stands in the way of one part; null where it is not asked for, or something fits each of its pieces. */
export function inTheWayOf(part: string, wants: Wants): InTheWay | null {
  const line = wants.lines.find(
    ({ matches, demands }) => matches.length === 0 && demands.some((demand) => demand.part === part),
  );
  return line ? inTheWay(line, wants) : null;
}

function inTheWay({ demands, pieces, single }: DemandLine, { offers }: Wants): InTheWay {
  const { ratings } = demands[0]!;
  const { matches, refused } = matchOffers(ratings, offers, { pieces });
  const eased = easings(ratings, refused, pieces)[0]?.text;
  const alike = single ? "no one offer fits all that have to be alike" : "what fits is sold out or has no price";
  return {
    ids: [...new Set(demands.map(({ part }) => part))],
    what: [ratings.aim?.text, TECHNOLOGIES.find(({ id }) => id === ratings.technologies[0])?.label]
      .filter(Boolean)
      .join(", "),
    why: matches.length > 0 ? alike : (eased ?? refused[0]?.why ?? `no ${ratings.kind} is offered`),
  };
}
