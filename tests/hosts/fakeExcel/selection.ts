import type { Block, Book, Node } from "./objects.js";
import { Refusal } from "./sheet.js";

type Span = { readonly first: number; readonly last: number };

/** The selection as several areas, one column wide; its visible cells are those of rows that are not hidden. */
export function selectedNode(book: Book, rangeOf: (block: Block) => Node): Node {
  const { row } = book.active;
  const hidden = book.sheets.find(({ name }) => name === book.active.sheet)!.hiddenRows;
  const areasOf = (spans: readonly Span[]): Node => ({
    kind: "RangeAreas",
    reach: {
      worksheet: () => rangeOf({ row: 0, column: 0, rows: 1, columns: 1 }).reach!.worksheet!(),
      areas: () => ({
        kind: "RangeCollection",
        items: () =>
          spans.map(({ first, last }) => rangeOf({ row: first, column: 0, rows: last - first + 1, columns: 1 })),
      }),
    },
    call: {
      getSpecialCellsOrNullObject: (type: string) => {
        if (type !== "Visible") throw new Refusal("InvalidArgument", type);
        return areasOf(spans.flatMap((span) => visible(span, hidden)));
      },
    },
  });
  return areasOf(book.marked ?? [{ first: row, last: row }]);
}

const visible = ({ first, last }: Span, hidden: readonly number[]): readonly Span[] =>
  Array.from({ length: last - first + 1 }, (_, index) => first + index)
    .filter((row) => !hidden.includes(row))
    .map((row) => ({ first: row, last: row }));
