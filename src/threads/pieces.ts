/** Things out of one list of an answer, under the list's key. */
export type Piece = { readonly key: string; readonly things: readonly unknown[] };

/** As many things as the page takes in at once without keeping the user waiting. */
const AT_ONCE = 1000;

type Parcel = { readonly pieces: readonly Piece[]; readonly rest: unknown };

/** An answer's long lists in pieces, and the answer with these lists empty; what has no long list is its own rest. */
export function inPieces(value: unknown): Parcel {
  if (typeof value !== "object" || value === null) return { pieces: [], rest: value };
  const long = Object.entries(value).filter(
    (entry): entry is [string, unknown[]] => Array.isArray(entry[1]) && entry[1].length > AT_ONCE,
  );
  if (long.length === 0) return { pieces: [], rest: value };
  return {
    pieces: long.flatMap(([key, list]) => slices(list).map((things) => ({ key, things }))),
    rest: { ...value, ...Object.fromEntries(long.map(([key]) => [key, []])) },
  };
}

const slices = (list: readonly unknown[]) =>
  Array.from({ length: Math.ceil(list.length / AT_ONCE) }, (_, i) => list.slice(i * AT_ONCE, (i + 1) * AT_ONCE));

/** An answer whole again. @param pieces In the order in which `inPieces` gave them. */
export function putTogether({ pieces, rest }: Parcel): unknown {
  if (pieces.length === 0) return rest;
  const lists = new Map<string, unknown[]>();
  for (const { key, things } of pieces) {
    const list = lists.get(key);
    if (list) list.push(...things);
    else lists.set(key, [...things]);
  }
  return { ...(rest as object), ...Object.fromEntries(lists) };
}
