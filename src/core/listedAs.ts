import type { Part } from "./part.js";
import type { Rule } from "./rule.js";

/** Kinds that are told good from bad, and bought, by a value. */
const VALUED: readonly Part["kind"][] = ["resistor", "capacitor", "potentiometer", "thermistor"];

/** How values are found where an old value is needed; other parts are had as they were, worked out, split or asked for. */
const FROM_OLD_VALUE: readonly Rule["valueMode"][] = ["exact", "nearest", "not_below", "not_above", "compose"];

/** True where neither list nor user says a value, nor a range, of a part whose rule finds the new value from the old. */
export const isValueUnknown = (part: Part, rule: ValueRule): boolean =>
  isValueWanting(part, rule) && part.span === null;

/** True where such a value is known within limits only: two are printed, or a span. */
export const isValueOpen = (part: Part, rule: ValueRule): boolean => isValueWanting(part, rule) && part.span !== null;

type ValueRule = Pick<Rule, "valueMode">;

const isValueWanting = ({ kind, value }: Part, { valueMode }: ValueRule): boolean =>
  VALUED.includes(kind) && FROM_OLD_VALUE.includes(valueMode) && value === null;

/** True where the value of a part was chosen when its set was tested, and nobody knows it: the old one tells it. */
export const isValueChosen = ({ listedAs, value }: Part): boolean => listedAs === "selected in test" && value === null;

/** True for a place where nothing is fitted. */
export const isLeftOut = ({ listedAs }: Part): boolean => listedAs === "not fitted";

/** True for a part without a value of its own that sits inside another one, and is had with that. */
export const isInside = ({ listedAs, value }: Part): boolean =>
  value === null && (listedAs?.startsWith("part of ") ?? false);
