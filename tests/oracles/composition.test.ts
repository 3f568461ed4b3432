import highs from "highs";
import { describe, expect, test } from "vitest";
import { makeUp, SERIES, stepsBetween, stockOf, type Wants } from "../../src/core/index.js";

/** The package's types are written for CommonJS; what is imported is the loader itself. */
const loadHighs = highs as unknown as typeof highs.default;
const solver = await loadHighs();

/** A building block of a series: what it comes to, and of how many parts. */
type Block = { readonly ohms: number; readonly parts: number };

/** All blocks of up to three parts that have a parallel outermost, and the single parts. */
function blocksOf(values: readonly number[]): Block[] {
  const beside = (...ohms: number[]) => 1 / ohms.reduce((sum, each) => sum + 1 / each, 0);
  const pairs = values.flatMap((a, i) => values.slice(i).map((b) => [a, b] as const));
  const triples = pairs.flatMap(([a, b]) => values.map((c) => [a, b, c] as const));
  return [
    ...values.map((ohms) => ({ ohms, parts: 1 })),
    ...pairs.map(([a, b]) => ({ ohms: beside(a, b), parts: 2 })),
    ...triples.map(([a, b, c]) => ({ ohms: beside(a, b, c), parts: 3 })),
    ...triples.map(([a, b, c]) => ({ ohms: beside(a + b, c), parts: 3 })),
  ];
}

/** How near a series of blocks comes to the ohms wanted with four parts at most, found as an integer program. */
function nearestBySolver(values: readonly number[], wanted: number): number {
  const blocks = blocksOf(values);
  const sum = (of: (block: Block) => number) => blocks.map((block, i) => `${of(block)} n${i}`).join(" + ");
  const model = `Minimize
 obj: over + under
Subject To
 value: ${sum(({ ohms }) => ohms / wanted)} - over + under = 1
 count: ${sum(({ parts }) => parts)} <= 4
General
 ${blocks.map((_, i) => `n${i}`).join(" ")}
End`;
  const options = { mip_rel_gap: 0, mip_abs_gap: 1e-9, mip_feasibility_tolerance: 1e-9 };
  return solver.solve(model, options).ObjectiveValue;
}

describe("networks with a series outermost, against an integer program", () => {
  test.each([
    [stepsBetween(100, 820, SERIES.E6), 1000 / Math.E],
    [stepsBetween(100, 820, SERIES.E6), 1000 / Math.PI],
    [stepsBetween(100, 820, SERIES.E6), 1000 * Math.SQRT2],
    [[120, 270, 390, 560], 777.7],
    [[10, 33, 68, 150, 470], 500 / Math.SQRT2],
  ])("from %j, %d ohms: none nearer than ours", (values, wanted) => {
    const wants: Wants = {
      kind: "resistor",
      wanted,
      window: { min: wanted / 2, max: wanted * 2 },
      stock: stockOf(values),
      only: "series",
      first: "nearest",
    };
    const ours = Math.abs(makeUp(wants).found[0]!.off);
    // Ours is nearest by ratio, theirs by difference: the two agree to second order.
    expect(Math.abs(ours - nearestBySolver(values, wanted))).toBeLessThan(ours ** 2 + 1e-6);
  });
});
