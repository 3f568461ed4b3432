/** Pairs of rows and columns of a table of points, each used once. */
export type Assignment = readonly (readonly [row: number, column: number])[];

const MOST_ROUNDS = 50;

/**
 * The best pairing of rows with columns: greedy by points, then improved by exchanging partners as long as that gains.
 *
 * Only pairs with more than `least` points are made.
 */
export function assign(points: readonly (readonly number[])[], least: number): Assignment {
  const all = points.flatMap((row, i) => row.flatMap((value, j) => (value > least ? [[value, i, j] as const] : [])));
  all.sort((a, b) => b[0] - a[0]);
  const [ofRow, ofColumn] = [new Map<number, number>(), new Map<number, number>()];
  for (const [, i, j] of all) {
    if (ofRow.has(i) || ofColumn.has(j)) continue;
    ofRow.set(i, j);
    ofColumn.set(j, i);
  }
  for (let round = 0; round < MOST_ROUNDS && exchange(points, ofRow, least); round++);
  return [...ofRow].sort((a, b) => a[0] - b[0]);
}

/** One round of exchanges between pairs; false when none gains. */
function exchange(points: readonly (readonly number[])[], ofRow: Map<number, number>, least: number): boolean {
  let gained = false;
  const rows = [...ofRow.keys()];
  for (const i of rows)
    for (const k of rows) {
      if (i >= k) continue;
      const [j, l] = [ofRow.get(i)!, ofRow.get(k)!];
      if (points[i]![l]! <= least || points[k]![j]! <= least || exchangeMargin(points, i, j, k, l) >= -1e-9) continue;
      ofRow.set(i, l);
      ofRow.set(k, j);
      gained = true;
    }
  return gained;
}

/** How many points two pairs have more than the same four parts paired the other way. */
export function exchangeMargin(
  points: readonly (readonly number[])[],
  i: number,
  j: number,
  k: number,
  l: number,
): number {
  return points[i]![j]! + points[k]![l]! - points[i]![l]! - points[k]![j]!;
}
