import { expect, test } from "vitest";
import { type Candidate, shortlist } from "../../../src/core/compose/shortlist.js";

const candidate = (key: string, distance: number, parts: number, price = 0, hardest = 0.5): Candidate => ({
  network: () => ({ series: [] }),
  key: () => key,
  distance,
  parts,
  price,
  hardest,
});

const keysOf = (first: "nearest" | "fewest", ...candidates: Candidate[]) => {
  const list = shortlist(3, first);
  for (const one of candidates) list.add(one);
  return list.best.map(({ key }) => key());
};

test.each([
  [[candidate("a", 0.2, 1), candidate("b", 0.1, 3)], "nearest", ["b", "a"], "nearest first"],
  [[candidate("a", 0.2, 1), candidate("b", 0.1, 3)], "fewest", ["a", "b"], "fewest first"],
  [[candidate("a", 0.1, 3), candidate("b", 0.1, 2)], "nearest", ["b", "a"], "equally near: fewer parts"],
  [[candidate("a", 0, 2, 5), candidate("b", 0, 2, 4)], "nearest", ["b", "a"], "equally many: cheaper"],
  [[candidate("a", 0, 2, 4, 0.9), candidate("b", 0, 2, 4, 0.5)], "nearest", ["b", "a"], "equally dear: load more even"],
  [[candidate("a", 0.1, 2), candidate("a", 0.1, 2)], "nearest", ["a"], "the same network come by twice"],
] as const)("%# %s: %s %s", (...[candidates, first, keys]) => {
  expect(keysOf(first, ...candidates)).toEqual(keys);
});

test("keeps the best few only, and says from when on a network matters", () => {
  const list = shortlist(2, "nearest");
  list.add(candidate("a", 0.3, 1));
  expect(list.reach()).toBe(Number.POSITIVE_INFINITY);
  list.add(candidate("b", 0.2, 1));
  list.add(candidate("c", 0.1, 1));
  expect(list.best.map(({ key }) => key())).toEqual(["c", "b"]);
  expect(list.reach()).toBe(0.2);
});
