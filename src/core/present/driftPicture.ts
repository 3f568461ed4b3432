import { drift, driftText } from "../measure/drift.js";
import { kindNamed, type Span } from "../part.js";
import { attempt } from "../problem.js";
import { readTolerance } from "../quantity/tolerance.js";
import { windowOf } from "../quantity/window.js";
import { writeValue } from "../quantity/writeValue.js";
import { type Measured, readReadings } from "./readingText.js";
import type { PartsRow } from "./sheets/parts.js";

/** One mark of the scale: where it stands, and how far that is from the printed value. */
export type ScaleMark = { readonly at: number; readonly text: string };

/** Two limits on the scale, with their figures. */
export type ScaleLimits = Span & { readonly text: string };

/** A row's limits and its reading on one scale of its own: 0 is its left end, 1 its right end. */
export type DriftPicture = {
  readonly listed: ScaleLimits;
  /** Of the new part; null for a part that stays. */
  readonly fresh: ScaleLimits | null;
  /** The reading; held at the end that it lies beyond when `isOff` is true. */
  readonly reading: ScaleMark & { readonly isOff: boolean };
  readonly marks: readonly ScaleMark[];
  /** The picture in words. */
  readonly text: string;
};

/** A reading farther from the listed limits than this many times their width would squeeze them into a line. */
const FARTHEST = 3;
/** Room left at each end of the scale, as a share of what is shown. */
const MARGIN = 0.08;
/** More marks than this do not stand beside each other at 320 pixels. */
const MOST_MARKS = 4;
/** Steps between marks, as ratios of the printed value. */
const STEPS = [0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5];
/** The quantities whose distance from the printed value is a drift. */
const VALUES: readonly Measured[] = ["resistance", "capacitance", "inductance"];

/** The reading of a row where it is a figure of the part's own value: not a leakage, an insulation or an ESR; else null. */
export function valueRead({ reading, value, kind }: Pick<PartsRow, "reading" | "value" | "kind">): number | null {
  if (reading === null) return null;
  const read = attempt(() => readReadings(reading, value, kindNamed(kind)));
  return read?.find(({ measured }) => VALUES.includes(measured))?.value ?? null;
}

/**
 * The listed limits, the new part's limits and the reading of one row, laid on one scale.
 *
 * Null where the row has no value with a tolerance, or no reading of that value (open, a leakage, nothing yet).
 *
 * @throws Never: what cannot be read has no picture.
 * @example driftPicture(row)?.text // "Listed 376 k to 564 k; new 446.5 k to 493.5 k; reads 612 k, +30 %"
 */
export function driftPicture(row: PartsRow): DriftPicture | null {
  const [read, nominal] = [valueRead(row), row.size];
  const listed = limits(row.size, row.tolerance);
  if (read === null || nominal === null || listed === null) return null;
  const fresh = row.action === "keep" ? null : limits(row.newSize, row.newTolerance);
  const width = listed.max - listed.min;
  const held = Math.min(Math.max(read, listed.min - FARTHEST * width), listed.max + FARTHEST * width);
  const shown = [listed.min, listed.max, held, ...(fresh ? [fresh.min, fresh.max] : [])];
  const [least, most] = [Math.min(...shown), Math.max(...shown)];
  const ends = { min: least - MARGIN * (most - least), max: most + MARGIN * (most - least) };
  const place = (value: number) => (value - ends.min) / (ends.max - ends.min);
  const write = (value: number) => writeValue(value, kindNamed(row.kind));
  const on = (span: Span): ScaleLimits => ({
    min: place(span.min),
    max: place(span.max),
    text: `${write(span.min)} to ${write(span.max)}`,
  });
  const picture = { listed: on(listed), fresh: fresh && on(fresh), marks: marksOf(nominal, ends, place) };
  const text = `${write(read)}, ${driftText(drift({ nominal, reading: read }))}`;
  const reading = { at: place(held), text, isOff: held !== read };
  return { ...picture, reading, text: inWords({ ...picture, reading }) };
}

function inWords({ listed, fresh, reading }: Omit<DriftPicture, "text">): string {
  const off = reading.isOff ? ", off this scale" : "";
  return [`Listed ${listed.text}`, ...(fresh ? [`new ${fresh.text}`] : []), `reads ${reading.text}${off}`].join("; ");
}

/** Marks at round distances from the printed value, as few as can stand beside each other. */
function marksOf(nominal: number, ends: Span, place: (value: number) => number): readonly ScaleMark[] {
  const [least, most] = [ends.min / nominal - 1, ends.max / nominal - 1];
  const step = STEPS.find((each) => Math.floor(most / each) - Math.ceil(least / each) < MOST_MARKS) ?? 10;
  const [first, last] = [Math.ceil(least / step), Math.floor(most / step)];
  return Array.from({ length: last - first + 1 }, (_, index) => {
    const ratio = Number(((first + index) * step).toPrecision(6));
    return { at: place(nominal * (1 + ratio)), text: driftText(ratio) };
  });
}

/** The limits of a nominal value; null where it or its tolerance is unknown, or leaves no room between them. */
function limits(size: number | null, tolerance: string | null): Span | null {
  if (size === null || !(size > 0) || tolerance === null) return null;
  const read = attempt(() => readTolerance(tolerance));
  const span = read && windowOf(size, read);
  return span && Number.isFinite(span.max) && span.max > span.min ? span : null;
}
