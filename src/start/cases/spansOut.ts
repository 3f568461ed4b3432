import { containment, type Judged, type Ratings, type Span } from "../../core/index.js";
import type { Answer } from "./answer.js";

/** Verdicts as the four of a guarded limit. @see ILAC-G8:09/2019 4.2.3 */
export const VERDICTS: Readonly<Record<string, string>> = {
  good: "IN",
  "likely good": "IN?",
  "likely bad": "OUT?",
  bad: "OUT",
  "says nothing in place": "says nothing",
};

const known = (number: number) => (Number.isFinite(number) ? number : null);

/** One reading with what bounds it: its limits, the lowest and highest true value, and the drift that is at least there. */
export function readingOut({ reading, verdict, limits, between, drift }: Judged): Answer {
  const { quantity, value, inPlace } = reading;
  const nominal = drift === null || value === null ? null : value / (1 + drift);
  const [low, high] = [known(between?.min ?? 0), known(between?.max ?? 0)];
  const drifts = nominal === null ? [] : [low, high].map((end) => (end === null ? null : end / nominal - 1));
  return {
    quantity,
    value: value === null ? null : known(value),
    inPlace,
    verdict: VERDICTS[verdict],
    limitLow: limits && known(limits.min),
    limitHigh: limits && known(limits.max),
    lowestTrue: low,
    highestTrue: high,
    ...(nominal === null ? {} : { driftAtLeast: drifts[0], driftAtMost: drifts[1] }),
  };
}

/** What the old part and the new one may really be, and whether the new range lies within the old. */
export function rangesOf({ old, range = null }: Ratings): Answer {
  const ends = (span: Span | null) => (span ? [span.min, span.max] : null);
  const contained = old && range ? containment(range, old).inside : null;
  return { oldRange: ends(old), newRange: ends(range), contained };
}
