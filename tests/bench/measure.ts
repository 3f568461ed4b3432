/** One thing to measure; see `index.ts`. */
export type Row = {
  readonly what: string;
  readonly count: number;
  readonly run: () => unknown;
  /** The `what` of an earlier row: the table shows how many times as fast this one is. */
  readonly comparedWith?: string;
};

/** A module's title and what it measures, in the order in which it is printed. */
export type Bench = { readonly title: string; readonly rows: () => readonly Row[] | Promise<readonly Row[]> };

/** Seconds for one run (the middle one, and the one that 95 in 100 do not exceed), and things done in a second. */
export type Measured = { readonly median: number; readonly p95: number; readonly rate: number };

const LEAST_RUNS = 3;
const MOST_RUNS = 200;
const PATIENCE_SECONDS = 1;

/** Runs a row once to warm up, then for about a second. */
export async function measure({ count, run }: Row): Promise<Measured> {
  await run();
  const times: number[] = [];
  let spent = 0;
  while (times.length < LEAST_RUNS || (times.length < MOST_RUNS && spent < PATIENCE_SECONDS)) {
    const start = performance.now();
    await run();
    const time = (performance.now() - start) / 1000;
    times.push(time);
    spent += time;
  }
  times.sort((a, b) => a - b);
  const median = times[times.length >> 1]!;
  return { median, p95: times[Math.ceil(times.length * 0.95) - 1]!, rate: count / median };
}
