import { describe, expect, test } from "vitest";
import { basketOf, type Demand, demandLines, NO_SPARES } from "../../../src/core/index.js";
import { offerOf, ratingsOf } from "../match/makers.js";

const demand = (part: string, differs: Partial<Demand> = {}): Demand => ({
  part,
  ratings: ratingsOf(),
  pieces: 1,
  pick: null,
  ...differs,
});
const few = offerOf({ id: "few", stock: 1, breaks: [[1, 0.05]] });
const many = offerOf({ id: "many", breaks: [[1, 0.2]] });

describe("what parts ask of the vendors", () => {
  test("parts that ask the same are one line; a pair that must be alike is another, from one offer", () => {
    const lines = demandLines(
      [demand("A-1"), demand("A-2", { alike: "A p" }), demand("A-3", { alike: "A p" })],
      [few, many],
    );
    expect(lines.map(({ id, pieces, single }) => [id, pieces, single])).toEqual([
      ["A-1", 1, false],
      ["A-2", 2, true],
    ]);
    expect(basketOf(lines, []).lines[1]).toMatchObject({ single: true });
  });

  test("parts that must be alike but ask for different limits get offers that fit all of them", () => {
    const strict = ratingsOf({ leastWatts: 2, wantWatts: 2 });
    const strong = offerOf({ id: "strong", watts: 2 });
    const [line] = demandLines(
      [demand("A-1", { alike: "p" }), demand("A-2", { alike: "p", ratings: strict })],
      [many, strong],
    );
    expect(line!.matches.map(({ offer }) => offer.id)).toEqual(["strong"]);
  });

  test("spares are by kind, and rounded up to whole pieces", () => {
    const spares = { ...NO_SPARES, resistor: 0.1 };
    const [line] = demandLines([demand("A-1", { pieces: 7 })], [many], spares);
    expect(line!.pieces).toBe(8);
    expect(demandLines([demand("A-1", { pieces: 10 })], [many], spares)[0]!.pieces).toBe(11);
    expect(demandLines([demand("A-1", { pieces: 7 })], [many], { ...NO_SPARES, capacitor: 1 })[0]!.pieces).toBe(7);
  });

  test("two pieces of one part are two lines with names of their own", () => {
    const other = ratingsOf({ wanted: 100_000, window: { min: 9e4, max: 1.1e5 } });
    const lines = demandLines([demand("A-1"), demand("A-1", { ratings: other })], [many]);
    expect(lines.map(({ id }) => id)).toEqual(["A-1", "A-1 piece 2"]);
  });

  test("an offer whose price can't be turned into its vendor's money is left out, and so is a line with no other", () => {
    const lines = demandLines([demand("A-1")], [many]);
    expect(basketOf(lines, [], undefined, () => null)).toMatchObject({ offers: [], lines: [] });
    expect(basketOf(lines, [], undefined, () => 2).offers[0]!.breaks).toEqual([[1, 0.4]]);
  });
});
