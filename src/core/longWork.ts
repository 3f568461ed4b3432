/** What long work comes to, done in one go. @param work Yields how far it is, which nobody asks here. */
export function finished<T>(work: Generator<unknown, T>): T {
  for (;;) {
    const { done, value } = work.next();
    if (done) return value;
  }
}

/** Long work as the first part of longer work. @param share Of the whole, 0..1. */
export function* asShare<T>(work: Generator<number, T>, share: number): Generator<number, T> {
  for (;;) {
    const { done, value } = work.next();
    if (done) return value;
    yield value * share;
  }
}
