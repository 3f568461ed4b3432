import type { Unit } from "../../quantity/notation/units.js";
import { unitAt } from "./figures.js";
import { spelledAt } from "./spelled.js";
import type { Token } from "./token.js";
import type { PrintedTolerance } from "./words.js";

type Side = { readonly sign: "both" | "plus" | "minus"; readonly to: number };
type Limit = { readonly number: number; readonly percent: boolean; readonly unit: Unit | null; readonly to: number };

/** Signs and words that open a tolerance, and the side they mean when nothing follows. */
export const SIDES: ReadonlyMap<string, Side["sign"]> = new Map([
  ["±", "both"],
  ["+", "plus"],
  ["plus", "plus"],
  ["-", "minus"],
  ["–", "minus"],
  ["minus", "minus"],
]);

/** The sign or words before a limit: ±, +-, +/-, plus or minus, +, -, plus, minus. */
function sideAt(tokens: readonly Token[], at: number): Side | null {
  const side = tokens[at]?.lexeme.side ?? null;
  if (side === null) return null;
  const [a, b, c] = [tokens[at]!.key, tokens[at + 1]?.key, tokens[at + 2]?.key];
  if (a === "+" && b === "/" && (c === "-" || c === "–")) return { sign: "both", to: at + 3 };
  if (a === "+" && (b === "-" || b === "–")) return { sign: "both", to: at + 2 };
  if (a === "plus" && b === "or" && c === "minus") return { sign: "both", to: at + 3 };
  if (a === "plus" && b === "-" && c === "minus") return { sign: "both", to: at + 3 };
  if (a === "plus" && b === "minus") return { sign: "both", to: at + 2 };
  return { sign: side, to: at + 1 };
}

/** Where a percent sign or word at a token ends, or -1. */
function percentEnd(tokens: readonly Token[], at: number): number {
  const key = tokens[at]?.key;
  if (key === "%" || key === "percent" || key === "pct") return at + 1;
  return key === "per" && tokens[at + 1]?.key === "cent" ? at + 2 : -1;
}

function limitAt(tokens: readonly Token[], at: number): Limit | null {
  const token = tokens[at];
  const spelled = token?.lexeme.isNumber ? spelledAt(tokens, at) : null;
  const end = spelled ? percentEnd(tokens, spelled.to) : -1;
  if (end > 0) return { number: spelled!.number, percent: true, unit: null, to: end };
  if (token?.type !== "number" || token.unit) return null;
  const percent = percentEnd(tokens, at + 1);
  if (percent > 0) return { number: token.value, percent: true, unit: null, to: percent };
  const unit = unitAt(tokens, at + 1);
  return { number: token.value, percent: false, unit: unit?.unit ?? null, to: unit?.to ?? at + 1 };
}

/**
 * The tolerance that starts at a token, or null: ±2 %, +-10%, 5 per cent, +80-20 %, -10/+50 %, +5 -5 mmf.
 *
 * Without a sign a percent must stand behind the number; with a lone plus (the lower stroke of ± lost) it is both ways.
 */
export function toleranceAt(tokens: readonly Token[], at: number): PrintedTolerance | null {
  const side = sideAt(tokens, at);
  const isFigure = tokens[at]?.type === "number" && percentEnd(tokens, at + 1) > 0;
  if (!side && !isFigure && !tokens[at]?.lexeme.isNumber) return null;
  const first = limitAt(tokens, side?.to ?? at);
  if (!first) return null;
  if (!side) return first.percent ? both(first, at, first.to) : null;
  if (side.sign === "both") return both(first, at, first.to);
  return twoSided(tokens, at, side.sign, first);
}

function twoSided(tokens: readonly Token[], at: number, sign: "plus" | "minus", first: Limit): PrintedTolerance | null {
  const between = tokens[first.to]?.text ?? "";
  const next = between === "/" || between === "," ? first.to + 1 : first.to;
  const side = sideAt(tokens, next);
  const second = side && side.sign !== "both" && side.sign !== sign ? limitAt(tokens, side.to) : null;
  if (!second) return sign === "plus" && first.percent ? both(first, at, first.to) : null;
  const absolute = !first.percent && !second.percent && (first.unit !== null || second.unit !== null);
  const ratio = absolute ? 1 : 0.01;
  const [plus, minus] = sign === "plus" ? [first.number, second.number] : [second.number, first.number];
  return {
    plus: plus * ratio,
    minus: minus * ratio,
    absolute,
    unit: first.unit ?? second.unit,
    from: at,
    to: second.to,
  };
}

function both(limit: Limit, from: number, to: number): PrintedTolerance {
  const size = limit.percent ? limit.number / 100 : limit.number;
  return { minus: size, plus: size, absolute: !limit.percent, unit: limit.unit, from, to };
}
