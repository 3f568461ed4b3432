import type { Wants } from "../../../src/core/compose/wants.js";

/** What is wanted of a resistor of 1000 ohms within ten percent, and whatever else a test says. */
export const wants = (more: Partial<Wants>): Wants => ({
  kind: "resistor",
  wanted: 1000,
  window: { min: 900, max: 1100 },
  stock: [],
  ...more,
});
