import { figures } from "../quantity/figures.js";

const FRACTIONS: Readonly<Record<string, string>> = { "0.125": "1/8", "0.25": "1/4", "0.5": "1/2" };

/** Watts as the trade writes them. @example wattsText(0.5) // "1/2 W" */
export const wattsText = (watts: number): string => `${FRACTIONS[String(watts)] ?? figures(watts)} W`;
