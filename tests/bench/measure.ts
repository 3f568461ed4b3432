/** One thing to measure; see `index.ts`. */
export type Row = {
  readonly what: string;
  /** How many things one run does. */
  readonly count: number;
  /** Sets up each run, and is not measured. */
  readonly before?: () => Promise<void>;
  /** The `what` of an earlier row: the table shows how many times as fast this one is. */
  readonly comparedWith?: string;
  readonly goal?: Goal;
} & (
  | { readonly run: () => unknown }
  /** A run that tells seconds of its own: not how long it took. */
  | { readonly seconds: () => Promise<number> }
);

/** What a row is to reach: seconds at the most, things a second, or times as fast as the row it is compared with. */
export type Goal =
  | { readonly p95: number }
  | { readonly median: number }
  | { readonly rate: number }
  | { readonly ratio: number };

/** A module's title and what it measures, in the order in which it is printed. */
export type Bench = { readonly title: string; readonly rows: () => readonly Row[] | Promise<readonly Row[]> };

/** Seconds for one run (the middle one, and the one that 95 in 100 do not exceed), and things done in a second. */
export type Measured = { readonly median: number; readonly p95: number; readonly rate: number };

const LEAST_RUNS = 3;
const MOST_RUNS = 500;
const PATIENCE_SECONDS = 0.5;
const WARMING_SECONDS = 0.25;
/** A run this long needs no warming up: the first is the measure. */
const SLOW_SECONDS = 2;

/** Runs a row to warm up, until it is compiled as it will be in use, then for about half a second. */
export async function measure(row: Row): Promise<Measured> {
  const [first] = await timesOf(row, { seconds: WARMING_SECONDS, least: 1 });
  const times = first! < SLOW_SECONDS ? await timesOf(row, { seconds: PATIENCE_SECONDS, least: LEAST_RUNS }) : [first!];
  times.sort((a, b) => a - b);
  const median = times[times.length >> 1]!;
  return { median, p95: times[Math.ceil(times.length * 0.95) - 1]!, rate: row.count / median };
}

type Patience = { readonly seconds: number; readonly least: number };

async function timesOf(row: Row, { seconds, least }: Patience): Promise<number[]> {
  const times: number[] = [];
  let spent = 0;
  while (times.length < least || (times.length < MOST_RUNS && spent < seconds)) {
    await row.before?.();
    const time = "seconds" in row ? await row.seconds() : await timed(row.run);
    times.push(time);
    spent += time;
  }
  return times;
}

/** Whether a measured row reaches its goal; `ratio` is null where it is compared with nothing. */
export function isMet(goal: Goal, { median, p95, rate }: Measured, ratio: number | null): boolean {
  if ("p95" in goal) return p95 <= goal.p95;
  if ("median" in goal) return median <= goal.median;
  if ("rate" in goal) return rate >= goal.rate;
  return (ratio ?? 0) >= goal.ratio;
}

async function timed(run: () => unknown): Promise<number> {
  const start = performance.now();
  await run();
  return (performance.now() - start) / 1000;
}
