import { inSpan } from "../quantity/inSpan.js";
import { writeValue } from "../quantity/writeValue.js";
import type { Rejected } from "../ratings.js";
import { stockLists } from "../rules/stockValues.js";
import type { Technology } from "../rules/technology.js";
import type { Need } from "./need.js";
import { toleranceFor } from "./pickValue.js";

/** Neighbours told on each side of the value wanted. */
const TOLD = 2;

const percent = (ratio: number) => {
  const text = Number((Math.abs(ratio) * 100).toPrecision(Math.abs(ratio) < 1 ? 2 : 3));
  const sign = ratio < 0 ? "−" : "+";
  return text === 0 ? "0 %" : `${sign}${text} %`;
};

/** The stock values around the one wanted, or all that the user has. */
function around(need: Need, technology: Technology, wanted: number): readonly number[] {
  if (need.stock) return need.stock;
  const values = stockLists(need.rule.series, technology, { min: wanted / 3, max: wanted * 3 })[0] ?? [];
  const below = values.filter((value) => value < wanted * (1 - 1e-9)).slice(-TOLD);
  return [...below, ...values.filter((value) => value > wanted * (1 + 1e-9)).slice(0, TOLD)];
}

/**
 * The values near the one wanted that do not serve, each with its reason; those that serve but lie farther off are left out.
 *
 * @example turnedDown(need, technology) // [{ what: "22 µF", why: "over the rectifier's 20 µF" }]
 */
export function turnedDown(need: Need, technology: Technology): readonly Rejected[] {
  const { wanted, window } = need.value;
  if (wanted === null || window === null) return [];
  return around(need, technology, wanted).flatMap((value) => {
    const why = whyNot(value, need, technology, wanted);
    return why === null ? [] : [{ what: writeValue(value, need.part.kind), why }];
  });
}

/**
 * The values near the one wanted that would serve as well as the one aimed at, in words; they only lie farther off. None where the
 * value aimed at is the one wanted.
 *
 * @example alsoServing(need, technology, 22e-6) // ["33 µF"]
 */
export function alsoServing(need: Need, technology: Technology, aimed: number | null): readonly string[] {
  const { wanted, window, mode } = need.value;
  if (wanted === null || window === null || aimed === null || mode === "exact") return [];
  if (Math.abs(aimed / wanted - 1) < 1e-9) return [];
  return around(need, technology, wanted)
    .filter((value) => Math.abs(value / aimed - 1) > 1e-9 && whyNot(value, need, technology, wanted) === null)
    .map((value) => writeValue(value, need.part.kind));
}

function whyNot(value: number, need: Need, technology: Technology, wanted: number): string | null {
  const { window, mostFarads, old } = need.value;
  const kind = need.part.kind;
  if (mostFarads !== null && value > mostFarads * (1 + 1e-9))
    return `over the rectifier's ${writeValue(mostFarads, kind)}`;
  const off = value / wanted - 1;
  if (!inSpan(value, window!)) {
    if (off < 0 && need.rule.low === 0) return `${percent(off)}: below nominal`;
    return `${percent(off)}: ${percent(need.rule.low!)} to ${percent(need.rule.high!)} is allowed`;
  }
  const { tolerance, excess } = toleranceFor(value, old, technology);
  if (need.rule.gate !== "contained" || excess === 0 || tolerance === null) return null;
  return `even at ${percent(tolerance.plus).slice(1)} its range leaves the old one by ${percent(excess).slice(1)}`;
}
