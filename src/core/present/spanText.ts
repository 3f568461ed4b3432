import type { Kind, Span } from "../part.js";
import { readValue } from "../quantity/readValue.js";
import { writeValue } from "../quantity/writeValue.js";

/** A value, or a span of values, as a cell says it. @example "470 k" @example "3 pF to 30 pF" */
export function writeValueOrSpan(value: number | null, span: Span | null, kind: Kind): string | null {
  if (value !== null) return writeValue(value, kind);
  return span === null ? null : `${writeValue(span.min, kind)} to ${writeValue(span.max, kind)}`;
}

/** "3 to 30 mmf": a unit printed once holds for both ends. */
function withUnit(first: string, second: string): readonly [string, string] {
  const unit = /[^\d.,/\s].*$/.exec(second)?.[0] ?? "";
  return [/\d$/.test(first) ? `${first} ${unit}`.trim() : first, second];
}

/**
 * Such a cell read back.
 *
 * @throws PartsError "unreadable" where a text is no value.
 */
export function readValueOrSpan(cell: string | null, kind: Kind): { value: number | null; span: Span | null } {
  if (cell === null) return { value: null, span: null };
  const ends = cell.split(/\s+to\s+/);
  if (ends.length !== 2) return { value: readValue(cell, { kind }).value, span: null };
  const [first, second] = withUnit(ends[0]!, ends[1]!).map((text) => readValue(text, { kind }).value);
  return { value: null, span: { min: Math.min(first!, second!), max: Math.max(first!, second!) } };
}
