/**
 * How near four of these resistors come to the value wanted, by plain loops over all forms: the fastest way to try
 * everything that is still obviously right. Returns the smallest logarithm of the ratio.
 */
export function nearestOfEveryFour(ohms: readonly number[], wanted: number): number {
  let best = Number.POSITIVE_INFINITY;
  const look = (value: number) => {
    best = Math.min(best, Math.abs(Math.log(value / wanted)));
  };
  const beside = (a: number, b: number) => (a * b) / (a + b);
  for (const [at, a] of ohms.entries()) {
    for (const b of ohms.slice(at)) {
      for (const c of ohms) {
        for (const d of ohms) {
          look(a + b + c + d);
          look(beside(a, b) + c + d);
          look(beside(a, b) + beside(c, d));
          look(beside(beside(a, b), c) + d);
          look(beside(a + b, c) + d);
          look(beside(beside(a, b), beside(c, d)));
          look(beside(beside(a + b, c), d));
          look(beside(a + b, c + d));
          look(beside(a + b + c, d));
          look(beside(beside(a, b) + c, d));
        }
      }
    }
  }
  return best;
}
