/** The items of each key, in order. The embedded library asks for it under `Object`; Node 20 has none. */
export function groupBy<T>(
  items: Iterable<T>,
  keyOf: (item: T, index: number) => PropertyKey,
): Record<PropertyKey, T[]> {
  const groups: Record<PropertyKey, T[]> = Object.create(null);
  let index = 0;
  for (const item of items) {
    const key = keyOf(item, index++);
    groups[key] ??= [];
    groups[key].push(item);
  }
  return groups;
}
