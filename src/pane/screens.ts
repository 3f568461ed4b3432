import type { Overview } from "../commands/overview.js";
import { counted } from "../commands/step.js";

/** The pane's screens, in two rows of four; Set and Functions are behind buttons of their own, Pairs where two lists meet. */
export const SCREENS = ["list", "parts", "bench", "vendors", "order", "fit", "papers"] as const;
export type Screen = (typeof SCREENS)[number] | "set" | "functions" | "rules" | "pairs";

/** What every screen may ask for: to go to another one. */
export type ScreenProps = { readonly go: (screen: Screen) => void };

/** What a screen is called, and what its count counts. */
export const SCREEN_WORDS: Readonly<
  Record<(typeof SCREENS)[number], { readonly name: string; readonly count: (seen: Overview) => string }>
> = {
  list: { name: "List", count: (seen) => `${seen.unclear} unclear` },
  parts: { name: "Parts", count: (seen) => `${seen.toDecide} to decide` },
  bench: { name: "Bench", count: (seen) => `${seen.toRead} to read` },
  vendors: { name: "Vendors", count: (seen) => `${seen.toFind} to find` },
  order: { name: "Order", count: (seen) => `${seen.onTheWay} on the way` },
  fit: { name: "Fit", count: (seen) => `${seen.toFit} to fit` },
  papers: { name: "Papers", count: () => "to print" },
};

/** Where the job goes on: the first screen with something open. */
export function whatNext(seen: Overview): { readonly screen: Screen; readonly text: string } {
  if (seen.parts === 0) return { screen: "list", text: "bring in a parts list" };
  if (seen.unclear > 0) return { screen: "list", text: `${counted(seen.unclear, "line is", "lines are")} unclear` };
  if (seen.toCompare) return { screen: "pairs", text: "compare the two lists of this set" };
  if (seen.toPair > 0)
    return { screen: "pairs", text: `say of ${counted(seen.toPair, "pair")} whether they are the same part` };
  if (seen.toDecide > 0)
    return { screen: "parts", text: `${counted(seen.toDecide, "part waits", "parts wait")} for you to decide` };
  if (seen.toFind > 0) return { screen: "vendors", text: `find offers for ${counted(seen.toFind, "part")}` };
  if (seen.toRead > 0) return { screen: "bench", text: `read ${counted(seen.toRead, "part")}` };
  if (seen.toFit > 0) return { screen: "fit", text: `fit ${counted(seen.toFit, "part")}` };
  return { screen: "papers", text: "print the papers" };
}
