import type { Tolerance, Warning } from "../../part.js";
import { close } from "../../quantity/close.js";
import { writeTolerance } from "../../quantity/tolerance.js";
import { SILENT, type Stated } from "./stated.js";

const WITHIN = 0.005;
const same = (a: number, b: number) => close(a, b) || Math.abs(a / b - 1) < WITHIN;

/**
 * What a row's cells and its description state together. Where two exclude each other neither is taken, and the row
 * says so: a wrong part costs more than a gap.
 */
export function merged(columns: Stated, description: Stated): Stated {
  const warnings: Warning[] = [...columns.warnings, ...description.warnings];
  const pick = <T>(
    what: string,
    a: T | null,
    b: T | null,
    equal: (a: T, b: T) => boolean,
    text: (of: T) => string,
  ): T | null => {
    if (a === null || b === null) return a ?? b;
    if (equal(a, b)) return a;
    warnings.push({ code: "conflict", text: `${what}: the column says ${text(a)}, the description ${text(b)}` });
    return null;
  };
  const sections = columns.sections ?? description.sections;
  const volts = mergedVolts(columns, description, warnings);
  return {
    ...SILENT,
    value: sections ? null : pick("value", columns.value, description.value, same, String),
    valueMin: columns.valueMin ?? description.valueMin,
    valueMax: columns.valueMax ?? description.valueMax,
    sections: sections?.map((section, i) => ({ ...section, volts: section.volts ?? voltsOf(i, volts) })) ?? null,
    tolerance: pick("tolerance", columns.tolerance, description.tolerance, sameTolerance, writeTolerance),
    watts: pick("watts", columns.watts, description.watts, same, String),
    volts,
    warnings,
  };
}

const sameTolerance = (a: Tolerance, b: Tolerance) =>
  Math.abs(a.minus - b.minus) < 0.002 && Math.abs(a.plus - b.plus) < 0.002;

/** Volts printed apart from the sections: one for each, or one for all. */
const voltsOf = (section: number, [first]: Stated["volts"]) =>
  first ? (first.volts.length > 1 ? (first.volts[section] ?? null) : first.volts[0]!) : null;

/** Volts agree where one of those printed in the column stands in the description too. */
function mergedVolts(columns: Stated, description: Stated, warnings: Warning[]): Stated["volts"] {
  if (columns.volts.length === 0 || description.volts.length === 0 || columns.sections || description.sections) {
    return columns.volts.length > 0 ? columns.volts : description.volts;
  }
  const said = description.volts.flatMap((run) => run.volts);
  if (columns.volts.some((run) => run.volts.some((volts) => said.some((other) => same(volts, other)))))
    return columns.volts;
  const [a, b] = [columns.volts[0]!.volts[0]!, said[0]!];
  warnings.push({ code: "conflict", text: `volts: the column says ${a}, the description ${b}` });
  return [];
}
