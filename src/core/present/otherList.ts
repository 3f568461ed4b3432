/** One thing that another list says of a part: a field and the figure or word; left aside where the user decided against it. */
export type Saying = { readonly field: string; readonly text: string; readonly leftAside: boolean };

/** What the row of another list says differently of the same part, or says alone. */
export type OtherSays = { readonly id: string; readonly says: readonly Saying[] };

const ASIDE = " left aside";
const BETWEEN_ROWS = " / ";
const BETWEEN = ", ";

/**
 * What other lists say of a part, as one cell.
 *
 * @example writeOtherList([{ id: "HL-40", says: [{ field: "watts", text: "2 W", leftAside: false }] }]) // "HL-40: watts 2 W"
 */
export function writeOtherList(all: readonly OtherSays[]): string {
  return all
    .filter(({ says }) => says.length > 0)
    .map(({ id, says }) => `${id}: ${says.map(writeSaying).join(BETWEEN)}`)
    .join(BETWEEN_ROWS);
}

const writeSaying = ({ field, text, leftAside }: Saying) => `${field} ${text}${leftAside ? ASIDE : ""}`;

/** Such a cell read back; what is no saying is passed over. @example readOtherList("HL-40: watts 2 W")[0].id // "HL-40" */
export function readOtherList(cell: string | null): readonly OtherSays[] {
  return (cell ?? "").split(BETWEEN_ROWS).flatMap((entry) => {
    const [, id, rest] = /^(\S+): (.+)$/.exec(entry.trim()) ?? [];
    if (id === undefined || rest === undefined) return [];
    return [{ id, says: rest.split(BETWEEN).flatMap(readSaying) }];
  });
}

function readSaying(entry: string): readonly Saying[] {
  const leftAside = entry.endsWith(ASIDE);
  const [, field, text] = /^(\S+) (.+)$/.exec(leftAside ? entry.slice(0, -ASIDE.length) : entry) ?? [];
  return field === undefined || text === undefined ? [] : [{ field, text, leftAside }];
}
