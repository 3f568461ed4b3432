import type { CanSection, Tolerance, Warning } from "../../part.js";

/** Working volts as printed once: "305VAC", "450/450/25 V". */
export type PrintedVolts = { readonly volts: readonly number[]; readonly current: "ac" | "dc" | null };

/** What one text (a description, a cell) states of a part's figures; base units, null where it is silent. */
export type Stated = {
  readonly value: number | null;
  readonly valueMin: number | null;
  readonly valueMax: number | null;
  readonly sections: readonly CanSection[] | null;
  readonly tolerance: Tolerance | null;
  readonly watts: number | null;
  readonly volts: readonly PrintedVolts[];
  readonly warnings: readonly Warning[];
};

/** A text that states nothing. */
export const SILENT: Stated = {
  value: null,
  valueMin: null,
  valueMax: null,
  sections: null,
  tolerance: null,
  watts: null,
  volts: [],
  warnings: [],
};

/** What is known when a text's figures are read: the part's technology, and what a bare capital M is in this list. */
export type StatedHints = {
  readonly technology: readonly string[];
  readonly capitalM: "thousand" | "million" | null;
};
