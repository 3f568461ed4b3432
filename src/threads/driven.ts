import type { Patience } from "./patience.js";

/** Milliseconds of work after which others are let in: to be told of progress, to be stopped. */
const BREATH = 40;

/**
 * Drives work to its end, telling how far it is; ends it when the signal says so. Work that was stopped before its turn
 * never starts.
 *
 * @param work Yields the share that is done, 0..1.
 * @param now Milliseconds.
 */
export async function driven<T>(
  work: Generator<number, T> | AsyncGenerator<number, T>,
  doing: string,
  { onProgress, signal }: Patience,
  now: () => number,
): Promise<T> {
  const breathe = async () => {
    await new Promise((others) => setTimeout(others));
    signal?.throwIfAborted();
    return now();
  };
  let last = await breathe();
  for (;;) {
    const { done, value } = await work.next();
    if (done) return value;
    if (now() - last < BREATH) continue;
    onProgress?.(value, doing);
    last = await breathe();
  }
}
