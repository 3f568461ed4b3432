import { describe, expect, test } from "vitest";
import { allocate } from "../../../src/core/order/allocate.js";
import { basketOf, lineOf, offerOf, vendorOf } from "./makers.js";

const offers = [offerOf("A-1", 1), offerOf("A-2", 1), offerOf("A-3", 1)];
const deal = (lines: ReturnType<typeof lineOf>[], bought: [string, number][], sources: [string, string][] = []) =>
  allocate(basketOf([vendorOf("A")], offers, lines), new Map(bought), new Map(sources));

describe("pieces bought are dealt out to the lines they fit", () => {
  test("a line gives up pieces that another needs more, over two hands", () => {
    // C1 could take all of A-1, but C3 has nothing else; C1 moves to A-2, which C2 gives up for A-3
    const lines = [lineOf("C1", 2, ["A-1", "A-2"]), lineOf("C2", 2, ["A-2", "A-3"]), lineOf("C3", 2, ["A-1"])];
    const supplies = deal(lines, [
      ["A-1", 2],
      ["A-2", 2],
      ["A-3", 2],
    ])!;
    expect(supplies.filter(({ line }) => line === "C3")).toEqual([{ offer: "A-1", line: "C3", pieces: 2 }]);
    expect(supplies.reduce((sum, { pieces }) => sum + pieces, 0)).toBe(6);
  });

  test("too few pieces serve nobody by halves", () => {
    expect(deal([lineOf("C1", 2, ["A-1"]), lineOf("C2", 1, ["A-1"])], [["A-1", 2]])).toBeNull();
  });

  test("parts that must be alike come from the offer chosen for them, or not at all", () => {
    const lines = [lineOf("R1", 2, ["A-1", "A-2"], true)];
    expect(
      deal(
        lines,
        [
          ["A-1", 1],
          ["A-2", 2],
        ],
        [["R1", "A-2"]],
      ),
    ).toEqual([{ offer: "A-2", line: "R1", pieces: 2 }]);
    expect(
      deal(
        lines,
        [
          ["A-1", 1],
          ["A-2", 1],
        ],
        [["R1", "A-2"]],
      ),
    ).toBeNull();
  });
});
