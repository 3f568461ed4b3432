import type { Span } from "../part.js";

/** Whether a value lies in a span, ends included within rounding. @example inSpan(10, { min: 9, max: 10 }) // true */
export function inSpan(value: number, span: Span): boolean {
  return value >= span.min * (1 - 1e-9) && value <= span.max * (1 + 1e-9);
}
