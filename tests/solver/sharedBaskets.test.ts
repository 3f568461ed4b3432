import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { faultsOf, type Plan, readBasket } from "../../src/core/index.js";
import { bestPlan } from "../../src/solver/bestPlan.js";

const FOLDER = path.resolve(import.meta.dirname, "../../../shared/baskets");
const files = existsSync(FOLDER) ? readdirSync(FOLDER).filter((file) => file.endsWith(".json")) : [];
if (files.length === 0) console.log("Skipped: ../shared/baskets is not there; its problems have known optima.");

describe.skipIf(files.length === 0)("problems whose optimum an independent model found", () => {
  test.each(files)("%s", async (file) => {
    const text = readFileSync(path.join(FOLDER, file), "utf8");
    const basket = readBasket(text);
    const { optimum } = JSON.parse(text) as { optimum: { cost?: number; infeasible?: true } };
    const found = await bestPlan(basket, { seconds: 25 });
    expect("infeasible" in found).toBe(optimum.infeasible === true);
    if ("infeasible" in found) expect(found.because.join(" ")).toContain("L4 wants 8 pieces; only 3 can be had");
    else expectOptimum(found, optimum.cost!, faultsOf(basket, found));
  });
});

function expectOptimum(plan: Plan, cost: number, faults: readonly string[]): void {
  expect(faults).toEqual([]);
  expect(Math.abs(plan.cost - cost)).toBeLessThan(0.006);
  expect(plan.cost - plan.bound).toBeLessThan(0.005);
}
