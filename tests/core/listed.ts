import { type ListedPart, NOTHING_LISTED } from "../../src/core/index.js";

/** A listed part that states nothing but what a test gives it. */
export function listed(stated: Partial<ListedPart> = {}): ListedPart {
  const resistor = { lines: [1], designators: ["R1"], kind: "resistor", valueState: "stated" } as const;
  return { ...NOTHING_LISTED, ...resistor, ...stated };
}
