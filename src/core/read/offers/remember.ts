const MOST = 20_000;

/**
 * A pure function of a text that remembers its answers: cells repeat themselves by the thousand in a vendor's list.
 *
 * At 20,000 texts it forgets them all and starts again, so that a long list costs no more memory than a short one.
 */
export function remembering<T>(work: (text: string) => T): (text: string) => T {
  const once = onceFor<T>(MOST);
  return (text) => once(text, () => work(text));
}

/** Does a piece of work once for all keys alike; at so many keys it forgets them all. The key says all the work rests on. */
export function onceFor<T>(most: number): (key: string, work: () => T) => T {
  const known = new Map<string, T>();
  return (key, work) => {
    const answer = known.get(key);
    if (answer !== undefined) return answer;
    if (known.size >= most) known.clear();
    const fresh = work();
    known.set(key, fresh);
    return fresh;
  };
}

/**
 * A text with every digit made 0: rows that differ in their figures only have one shape, and words are looked up once
 * for all of them.
 *
 * @example shapeOf("RES 470 OHM 5%") // "RES 000 OHM 0%"
 */
export const shapeOf = (text: string): string => text.replace(/[1-9]/g, "0");
