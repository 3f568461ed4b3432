import { easings, matchOffers } from "../core/index.js";
import type { Wants } from "./orderBook.js";

/** A want that nothing fits: its parts, what is wanted, and what stands in the way. */
export type InTheWay = { readonly parts: string; readonly what: string; readonly why: string };

/** Every want that no offer fits: the one limit whose easing would let something in, or what the nearest miss lacks. */
export function standsInTheWay({ lines, offers }: Wants): readonly InTheWay[] {
  return lines
    .filter((line) => line.matches.length === 0)
    .map((line) => {
      const { ratings } = line.demands[0]!;
      const { matches, refused } = matchOffers(ratings, offers, { pieces: line.pieces });
      const eased = easings(ratings, refused, line.pieces)[0]?.text;
      const soldOut = matches.length > 0 ? "what fits is sold out or has no price" : null;
      return {
        parts: line.demands.map(({ part }) => part).join(" "),
        what: [ratings.aim?.text, ratings.technologies[0]?.replaceAll("_", " ")].filter(Boolean).join(", "),
        why: soldOut ?? eased ?? refused[0]?.why ?? `no ${ratings.kind} is offered`,
      };
    });
}
