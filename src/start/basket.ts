import { readFileSync } from "node:fs";
import { type Infeasible, type Plan, readBasket, toCent } from "../core/index.js";
import { openNodeWorker } from "../solver/nodeWorker.js";
import { planInWorker } from "../solver/planInWorker.js";

/** Seconds from the start of this process in which the search has to end: with what comes before and after the whole stays under 30. */
const SECONDS = 23.5;

/** `npm run -s basket -- FILE`: reads an ordering problem and prints the best plan as JSON on one line. */
async function main([file]: readonly string[]): Promise<void> {
  if (!file) throw new Error("Which file? npm run -s basket -- FILE.json");
  const basket = readBasket(readFileSync(file, "utf8"));
  const plan = await planInWorker(openNodeWorker(), { basket, seconds: SECONDS - performance.now() / 1000 });
  console.log(JSON.stringify(printed(plan, performance.now() / 1000)));
}

/** Money to the cent: what is proven of the unrounded cost holds for the rounded one. */
function printed(plan: Plan | Infeasible, seconds: number) {
  if ("infeasible" in plan) return plan;
  const cost = toCent(plan.cost);
  return { ...plan, cost, bound: Math.min(cost, toCent(plan.bound)), seconds: Number(seconds.toFixed(2)) };
}

main(process.argv.slice(2)).catch((error: Error) => {
  console.error(error.message);
  process.exitCode = 1;
});
