import { networkValue } from "../compose/network.js";
import { readNetwork } from "../compose/networkText.js";
import type { Kind, Span } from "../part.js";
import { figures } from "../quantity/figures.js";
import { containment, windowOf } from "../quantity/window.js";
import { writeValue } from "../quantity/writeValue.js";
import type { Aim } from "../ratings.js";

/** What an aim comes to, made up or not, in base units; null where it has no value. @example valueOfAim(aim, "resistor") // 4_800_000 */
export function valueOfAim({ pieces, text }: Aim, kind: Kind): number | null {
  if (pieces.some((piece) => piece.value === null)) return null;
  if (/\+|\|\|/.test(text)) return networkValue(readNetwork(text, kind), kind);
  return pieces.length === 1 ? pieces[0]!.value : null;
}

/** What an aim may really be, by the widest tolerance of its pieces of the part's own kind; null where none is known. */
export function rangeOf(aim: Aim | null, kind: Kind): Span | null {
  const value = aim && valueOfAim(aim, kind);
  const tolerances = (aim?.pieces ?? []).flatMap((piece) =>
    piece.kind === undefined || piece.kind === kind ? (piece.tolerance ?? []) : [],
  );
  if (value == null || tolerances.length === 0) return null;
  const [minus, plus] = [tolerances.map((one) => one.minus), tolerances.map((one) => one.plus)];
  return windowOf(value, { minus: Math.max(...minus), plus: Math.max(...plus) });
}

/**
 * How the new range lies in the old one, in words: within it, or by how much it leaves it.
 *
 * @example rangeSaid({ min: 4.23e-8, max: 5.17e-8 }, { min: 4e-8, max: 6e-8 }, "capacitor") // "0.0423 µF to 0.0517 µF lies within 0.04 µF to 0.06 µF"
 */
export function rangeSaid(range: Span, old: Span, kind: Kind): string {
  const spanned = ({ min, max }: Span) => {
    const [low, high] = [min, max].map((value) => writeValue(Number(value.toPrecision(4)), kind));
    return min > 0 ? `${low} to ${high}` : `up to ${high}`;
  };
  const { inside, below, above } = containment(range, old);
  if (inside) return `${spanned(range)} lies within ${spanned(old)}`;
  const excess = figures(Number((Math.max(below, above) * 100).toPrecision(2)));
  return `its range leaves the old one (${spanned(old)}) by ${excess} %`;
}
