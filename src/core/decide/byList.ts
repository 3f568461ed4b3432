import { isInside, isLeftOut, isValueChosen } from "../listedAs.js";
import type { Part } from "../part.js";
import type { Action } from "../rule.js";

/** What is to be done, and why, where the list's own words settle it and no rule is asked. */
export type ByList = { readonly action: Action; readonly leads: string };

/**
 * What a list settles by itself: nothing is fitted there, or the part sits inside another one and has no value of its own.
 *
 * @example settledByList({ ...part, listedAs: "not fitted" })?.action // "keep"
 */
export function settledByList(part: Part): ByList | null {
  if (isLeftOut(part))
    return { action: "keep", leads: "the list says that none is fitted here: look whether that is so" };
  if (isInside(part))
    return { action: "check", leads: `it is ${part.listedAs}: judge it with that, nothing is bought for it` };
  return null;
}

/**
 * Why a part whose value nobody knows can't be judged, and what would settle it.
 *
 * @example askForValue({ ...part, listedAs: "selected in test" }).leads // "its value was chosen when the set was tested: ..."
 */
export function askForValue(part: Part): ByList {
  const why = isValueChosen(part)
    ? "its value was chosen when the set was tested: measure the old one lifted, and type what it reads as its value"
    : "its value is not known: read it off the part or the circuit, and type it as its value";
  return { action: "ask", leads: why };
}
