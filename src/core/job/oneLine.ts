import type { Part } from "../part.js";
import { figures } from "../quantity/figures.js";
import { writeTolerance } from "../quantity/tolerance.js";
import { writeValue } from "../quantity/writeValue.js";
import type { Piece, Ratings } from "../ratings.js";
import { technologyOf } from "../rules/technologies.js";
import type { Stages } from "./stages.js";

const FRACTIONS: Readonly<Record<string, string>> = { "0.125": "1/8", "0.25": "1/4", "0.5": "1/2" };

const wattsText = (watts: number | null) => (watts === null ? "" : `${FRACTIONS[String(watts)] ?? figures(watts)} W`);

const lower = (label: string) => (/^[A-Z][a-z]/.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label);

const joined = (texts: readonly (string | null | undefined)[], by = " ") => texts.filter(Boolean).join(by);

/** The old part as a restorer names it. @example oldText(stages) // "R7 470 k 1/2 W carbon composition resistor, plate load" */
export function oldText({ part, rule }: Stages): string {
  const volts = part.kind === "capacitor" && part.volts ? `${figures(part.volts.value)} V` : "";
  const watts = part.kind === "resistor" ? wattsText(part.watts?.value ?? null) : "";
  const value = part.value ? writeValue(part.value.value, part.kind) : "";
  const name = joined([part.designator, value, watts, volts, lower(rule.classRow.label)]);
  return rule.roleRow.id === "general" ? name : `${name}, ${lower(rule.roleRow.label)}`;
}

/** The new part in words. @example newText(ratings) // "470 k ±5 % 1 W metal film, 350 V body" */
export function newText({ kind, aim, choices = [], voltsKind }: Ratings): string {
  const piece = aim?.pieces[0];
  if (!aim || !piece) return choices.length > 0 ? `choose: ${choices.join("; or ")}` : "";
  const technology = lower(technologyOf(piece.technology)?.label ?? piece.technology);
  const several = aim.pieces.length > 1 ? ` (${aim.pieces.filter((each) => !each.kind).length} pieces)` : "";
  return joined(
    [joined([aim.text, tolerance(piece), wattsText(piece.watts), technology]) + several, volts(piece, kind, voltsKind)],
    ", ",
  );
}

const tolerance = (piece: Piece) => (piece.tolerance ? writeTolerance(piece.tolerance) : "");

function volts(piece: Piece, kind: Part["kind"], voltsKind: "ac" | "dc"): string {
  if (piece.volts === null) return "";
  if (kind === "resistor") return `${figures(piece.volts)} V body`;
  return `${figures(piece.volts)} V${voltsKind === "ac" ? " a.c." : ""}`;
}

/**
 * One line that a restorer would write of a part: what it was, what was read, what is done, what takes its place and why.
 *
 * @example oneLine(stages) // "R7 470 k 1/2 W carbon composition resistor, plate load: reads 612 k, +30 %: bad; replace; 470 k ..."
 */
export function oneLine(stages: Stages): string {
  const { decision, ratings } = stages;
  const [first] = decision.because;
  const fitted = decision.action === "keep" || decision.action === "check" ? "" : newText(ratings);
  const limit = fitted ? ratings.because.find((why) => !why.startsWith("its range")) : undefined;
  const what =
    decision.action === "test" || decision.action === "lift" ? `${decision.action}; if it goes` : decision.action;
  const done = joined([what, fitted], fitted ? ": " : "");
  return `${oldText(stages)}: ${joined([first, done, limit ? `because ${limit}` : ""], "; ")}`;
}

/**
 * Why, in a few words: what decided, what the new part's limits rest on, what is still to choose, and whether the rules
 * are nobody's but the defaults.
 *
 * @example reasonOf(stages, true) // "composition drifts ...; 250 V across it ...; by the default rules"
 */
export function reasonOf({ decision, ratings, rule }: Stages, byDefault: boolean): string {
  const limits = decision.action === "keep" ? [] : ratings.because;
  const choices = ratings.choices ?? [];
  return [
    ...new Set([...decision.because, ...limits]),
    ...(choices.length > 0 ? [`choose: ${choices.join("; or ")}`] : []),
    byDefault ? `by the default rules, policy ${rule.policy}` : `by your rules, policy ${rule.policy}`,
  ].join("; ");
}
