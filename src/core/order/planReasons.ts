import type { Basket, Plan } from "../plan.js";
import { type Alternative, alternativesTo } from "./alternatives.js";
import { dearerChoices, type VendorReason, vendorReasons } from "./reasons.js";

/** Why a plan is as it is: what else could be done and its cost, why each vendor is in it, and where goods are not the cheapest. */
export type PlanReasons = {
  readonly alternatives: readonly Alternative[];
  readonly vendors: readonly VendorReason[];
  readonly dearer: ReturnType<typeof dearerChoices>;
};

/** Why a plan is as it is. Takes as long as several quick plans: on a page ask in another thread. */
export const planReasons = (basket: Basket, plan: Plan): PlanReasons => ({
  alternatives: alternativesTo(basket),
  vendors: vendorReasons(basket, plan),
  dearer: dearerChoices(basket, plan),
});
