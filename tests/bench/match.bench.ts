import { indexOffers, matchOffers, offersInPlay } from "../../src/core/index.js";
import { manyOffers, manyRatings } from "./manyOffers.js";
import type { Bench } from "./measure.js";

const parts = manyRatings(1000);
const few = parts.slice(0, 2);

/** Best five offers for each of 1,000 parts; the scan of everything is measured on two of them. */
export const bench: Bench = {
  title: "matching: best five offers a part",
  rows: () =>
    [100_000, 1_000_000].flatMap((count) => {
      const offers = manyOffers(count);
      const index = indexOffers(offers);
      const find = offersInPlay(index, (row) => offers[row]!);
      const [list, scan] = [count.toLocaleString("en"), `a scan of ${count.toLocaleString("en")} offers`];
      return [
        { what: `index of ${list} offers built`, count, run: () => indexOffers(offers) },
        {
          what: scan,
          count: few.length,
          run: () => few.reduce((n, part) => n + matchOffers(part, offers).matches.length, 0),
        },
        {
          what: `index, 1,000 parts against ${list}`,
          count: parts.length,
          run: () => parts.map((part) => find(part, { most: 5 })),
          comparedWith: scan,
        },
        {
          what: `... of ${list}, asked for the first time`,
          count: parts.length,
          run: () => {
            const fresh = offersInPlay(index, (row) => offers[row]!);
            return parts.map((part) => fresh(part, { most: 5 }));
          },
          comparedWith: scan,
        },
      ];
    }),
};
