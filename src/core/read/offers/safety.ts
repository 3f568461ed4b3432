import type { PrintedVolts } from "./stated.js";

const CLASS = /(?<!\w)([XY][12])(?!\w)/gi;

/** The safety class a text prints, two with a stroke between, or null. @see IEC 60384-14 @example safetyIn("X1, Y2") // "X1/Y2" */
export function safetyIn(text: string): string | null {
  const classes = new Set([...text.matchAll(CLASS)].map(([, name]) => name!.toUpperCase()));
  return classes.size > 0 ? [...classes].sort().join("/") : null;
}

const COEFFICIENT = /(?<![\w])(NP[0O]|C[0O]G|COG|[NP]\d{2,4}|[XYZ][4-9][A-HJ-NP-V])(?![\w])/i;

/** The temperature code a text prints, or null; NPO and C0G are NP0. @see EIA-198 @example coefficientIn("C0G, NP0") // "NP0" */
export function coefficientIn(text: string): string | null {
  const found = COEFFICIENT.exec(text)?.[1]?.toUpperCase();
  if (!found) return null;
  return /^(NPO|NP0|C0G|COG)$/.test(found) ? "NP0" : found;
}

/** The volts that rate the part, and whether they are a.c.; null where none or several without order are printed. */
export type RatedVolts = { readonly volts: number | null; readonly kind: "ac" | "dc" | null };

/**
 * The working volts among those printed: a safety part is rated in a.c., the lower where it has two; any other part with
 * both is rated in d.c.; of working and surge volts the first counts.
 */
export function ratedVolts(printed: readonly PrintedVolts[], safetyClass: string | null): RatedVolts {
  if (printed.length === 0) return { volts: null, kind: safetyClass ? "ac" : null };
  if (safetyClass) {
    const alternating = printed.filter((run) => run.current === "ac");
    const runs = alternating.length > 0 ? alternating : printed.filter((run) => run.current !== "dc");
    const all = (runs.length > 0 ? runs : printed).flatMap((run) => run.volts);
    return { volts: safetyClass.includes("/") ? Math.min(...all) : all[0]!, kind: "ac" };
  }
  const direct =
    printed.find((run) => run.current === "dc") ?? printed.find((run) => run.current === null) ?? printed[0]!;
  return { volts: direct.volts[0]!, kind: direct.current };
}
