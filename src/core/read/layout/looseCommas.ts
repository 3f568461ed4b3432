import type { Strip } from "./pieces.js";
import type { Head } from "./row.js";

const START = /^\d{1,3}$/;
const REST = /^[\dOo]{3}\s*(?:ohms?|Ω|Ω|k?cs|mmfd?|uuf|pf)\b/i;

/**
 * A row of cells with a figure that its own comma cut in two ("33" | "000 ohms") made whole again; what stands behind
 * moves up. Only the column of values or descriptions is looked at: a count before a value is no thousand.
 */
export function withThousandsClosed(heads: readonly Head[], strip: Strip): Strip {
  if (strip.form !== "cells") return strip;
  const at = strip.pieces.findIndex(({ text, start }, i) => {
    const role = heads.find((head) => head.start === start)?.role;
    const isOwn = role === "value" || role === "description";
    return isOwn && START.test(text) && REST.test(strip.pieces[i + 1]?.text ?? "");
  });
  if (at < 0) return strip;
  const whole = { ...strip.pieces[at]!, text: `${strip.pieces[at]!.text},${strip.pieces[at + 1]!.text}` };
  const behind = strip.pieces.slice(at + 2).map((piece) => ({ ...piece, start: piece.start - 1 }));
  return { ...strip, pieces: [...strip.pieces.slice(0, at), whole, ...behind] };
}
