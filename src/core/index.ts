export * from "./fact.js";
export * from "./offer.js";
export * from "./part.js";
export * from "./plan.js";
export * from "./problem.js";
export { close } from "./quantity/close.js";
export * from "./ratings.js";
export * from "./rule.js";
export * from "./table.js";
