/** So many pieces for one part, by its id. */
export type PiecesFor = { readonly part: string; readonly pieces: number };

/** For which parts something is, as a cell; a part that gets one piece stands without a count. @example writeForWhom([{ part: "HL-3", pieces: 2 }, { part: "MB-1", pieces: 1 }]) // "HL-3 ×2 MB-1" */
export const writeForWhom = (shares: readonly PiecesFor[]): string =>
  shares.map(({ part, pieces }) => (pieces === 1 ? part : `${part} ×${pieces}`)).join(" ");

/** Such a cell read back; a count may also be typed as x2. */
export function readForWhom(cell: string | null): readonly PiecesFor[] {
  return [...(cell ?? "").matchAll(/([^\s,;×]\S*?)(?:\s*[×x](\d+))?(?=[\s,;]|$)/g)].map(([, part, pieces]) => ({
    part: part!,
    pieces: Number(pieces ?? 1),
  }));
}

/** So many pieces dealt out, first come first served: what each part gets; parts that get none are not named. */
export function dealtOut(shares: readonly PiecesFor[], pieces: number): readonly PiecesFor[] {
  let left = pieces;
  return shares.flatMap((share) => {
    const got = Math.min(left, share.pieces);
    left -= got;
    return got > 0 ? [{ part: share.part, pieces: got }] : [];
  });
}
