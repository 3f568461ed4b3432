/**
 * Sums of one or two numbers each, in ascending order, with the places of their terms; `second` is -1 where there is
 * but one term.
 */
export type Sums = { readonly sums: Float64Array; readonly first: Int16Array; readonly second: Int16Array };

/** Sums with an index: each bucket holds one slice of the logarithm, so that the start of a range is found at once. */
export type IndexedSums = Sums & {
  readonly bucketOf: (sum: number) => number;
  /** Where each bucket starts; one more entry than there are buckets. */
  readonly starts: Int32Array;
};

/** The numbers themselves, sorted. All must be above 0. */
export function sortedSingles(numbers: Float64Array): Sums {
  const order = Int16Array.from(numbers, (_, place) => place).sort((a, b) => numbers[a]! - numbers[b]!);
  const sums = Float64Array.from(order, (place) => numbers[place]!);
  return { sums, first: order, second: new Int16Array(order.length).fill(-1) };
}

/** Every sum of two of the numbers (also of one with itself), sorted. All must be above 0. */
export function sortedPairs(numbers: Float64Array): IndexedSums {
  const count = (numbers.length * (numbers.length + 1)) / 2;
  const sums = new Float64Array(count);
  const first = new Int16Array(count);
  const second = new Int16Array(count);
  let at = 0;
  for (let a = 0; a < numbers.length; a++) {
    for (let b = a; b < numbers.length; b++) {
      sums[at] = numbers[a]! + numbers[b]!;
      first[at] = a;
      second[at++] = b;
    }
  }
  return sorted({ sums, first, second });
}

/** Those of the sums that are to be kept, still sorted. */
export function keptSums(from: Sums, keep: (at: number) => boolean): Sums {
  const order = new Int32Array(from.sums.length);
  let kept = 0;
  for (let at = 0; at < order.length; at++) if (keep(at)) order[kept++] = at;
  return picked(from, order.subarray(0, kept));
}

/** The reciprocals of the sums, in ascending order again. */
export function reciprocals({ sums, first, second }: Sums): Sums {
  return {
    sums: sums.map((sum) => 1 / sum).reverse(),
    first: first.slice().reverse(),
    second: second.slice().reverse(),
  };
}

/** The place of the first sum that is not below `low`. */
export function firstFrom({ sums, bucketOf, starts }: IndexedSums, low: number): number {
  let at = starts[bucketOf(low)]!;
  while (at < sums.length && sums[at]! < low) at++;
  return at;
}

/** A counting sort into about one bucket for two sums, then each bucket by itself. Plain loops: there are many sums. */
function sorted(unsorted: Sums): IndexedSums {
  const count = unsorted.sums.length;
  const bucketOf = bucketing(unsorted.sums);
  const buckets = new Int32Array(count);
  const starts = new Int32Array(bucketOf(Number.MAX_VALUE) + 2);
  for (let at = 0; at < count; at++) {
    buckets[at] = bucketOf(unsorted.sums[at]!);
    starts[buckets[at]! + 1]!++;
  }
  for (let bucket = 1; bucket < starts.length; bucket++) starts[bucket]! += starts[bucket - 1]!;
  const order = new Int32Array(count);
  const next = starts.slice();
  for (let at = 0; at < count; at++) order[next[buckets[at]!]!++] = at;
  sortBuckets(order, unsorted.sums, starts);
  return { ...picked(unsorted, order), bucketOf, starts };
}

function picked({ sums, first, second }: Sums, order: Int32Array): Sums {
  const count = order.length;
  const into = { sums: new Float64Array(count), first: new Int16Array(count), second: new Int16Array(count) };
  for (let at = 0; at < count; at++) {
    const from = order[at]!;
    into.sums[at] = sums[from]!;
    into.first[at] = first[from]!;
    into.second[at] = second[from]!;
  }
  return into;
}

/** Insertion sort within each bucket: they hold a few sums each. */
function sortBuckets(order: Int32Array, sums: Float64Array, starts: Int32Array): void {
  for (let bucket = 0; bucket + 1 < starts.length; bucket++) {
    const start = starts[bucket]!;
    for (let i = start + 1; i < starts[bucket + 1]!; i++) {
      const moving = order[i]!;
      let hole = i;
      while (hole > start && sums[order[hole - 1]!]! > sums[moving]!) order[hole] = order[--hole]!;
      order[hole] = moving;
    }
  }
}

/**
 * The bucket of a sum: slices from the smallest sum to the largest, outliers in the outermost ones.
 *
 * The upper half of a number's bits, read as a whole number, rises as its logarithm does; it costs far less.
 */
function bucketing(sums: Float64Array): (sum: number) => number {
  let [least, most] = [Number.POSITIVE_INFINITY, 0];
  for (let at = 0; at < sums.length; at++) {
    if (sums[at]! < least) least = sums[at]!;
    if (sums[at]! > most) most = sums[at]!;
  }
  const bits = new DataView(new ArrayBuffer(8));
  const upperHalf = (sum: number) => {
    bits.setFloat64(0, sum);
    return bits.getInt32(0);
  };
  const [lowest, highest] = [upperHalf(least), upperHalf(most)];
  const last = Math.max(1, sums.length >> 1);
  const scale = highest > lowest ? last / (highest - lowest) : 0;
  return (sum) => {
    const slice = (upperHalf(sum) - lowest) * scale;
    return slice > 0 ? Math.min(last, Math.floor(slice)) : 0;
  };
}
