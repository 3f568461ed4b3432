import { zoneOf } from "../../../src/hosts/addresses.js";
import { selectedNode } from "./selection.js";
import { entered, formatAt, keyOf, newSheet, Refusal, type Sheet, usedBlock, type Value, valuesOf } from "./sheet.js";

/** One object of Excel: what can be reached, asked, set and called; anything else is refused. */
export type Node = {
  readonly kind: string;
  /** Under what name the proxies keep it between requests, once they asked to. */
  reference?: string;
  readonly reach?: Record<string, () => Node | null>;
  readonly ask?: Record<string, () => unknown>;
  readonly set?: Record<string, (value: never) => unknown>;
  readonly call?: Record<string, (...args: never[]) => unknown>;
  readonly items?: () => readonly Node[];
};

/** The whole workbook of the fake; `marked` are further rows of the selection, "first-last" from 0. */
export type Book = {
  sheets: Sheet[];
  active: { sheet: string; row: number; column: number };
  marked?: readonly { first: number; last: number }[];
};

export type Events = { readonly selected: () => void; readonly changed: (sheetId: string) => void };

export type Block = { readonly row: number; readonly column: number; readonly rows: number; readonly columns: number };

/** The root of all paths. */
export function workbookOf(book: Book, events: Events): Node {
  const sheetOf = (wanted: string) => book.sheets.find(({ name, id }) => name === wanted || id === wanted);
  const orNull = (wanted: string) => {
    const found = sheetOf(wanted);
    return found ? sheetNode(book, found, events) : null;
  };
  const worksheets: Node = {
    kind: "Worksheets",
    items: () => book.sheets.map((sheet) => sheetNode(book, sheet, events)),
    call: {
      getItemOrNullObject: orNull,
      getItem: (wanted: string) => orNull(wanted) ?? refuse("ItemNotFound", `no sheet ${wanted}`),
      add: (name: string) => {
        if (sheetOf(name)) refuse("ItemAlreadyExists", name);
        if (!/^[^[\]*?/\\:]{1,31}$/.test(name)) refuse("InvalidArgument", name);
        book.sheets.push(newSheet(`{${name}}`, name));
        return orNull(name)!;
      },
      _RegisterDataChangedEvent: () => undefined,
      _UnregisterDataChangedEvent: () => undefined,
    },
  };
  const activeCell = () => {
    const { sheet, row, column } = book.active;
    return rangeNode(book, sheetOf(sheet)!, { row, column, rows: 1, columns: 1 }, events);
  };
  return {
    kind: "Workbook",
    reach: {
      worksheets: () => worksheets,
      application: () => ({ kind: "Application", call: { suspendApiCalculationUntilNextSync: () => undefined } }),
    },
    call: {
      getActiveCell: activeCell,
      getSelectedRanges: () =>
        selectedNode(book, (block) => rangeNode(book, sheetOf(book.active.sheet)!, block, events)),
    },
  };
}

function refuse(code: string, message: string): never {
  throw new Refusal(code, message);
}

function sheetNode(book: Book, sheet: Sheet, events: Events): Node {
  const range = (block: Block) => rangeNode(book, sheet, block, events);
  const at = (address: string) => {
    const { left, right, top, bottom } = zoneOf(address);
    return range({ row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 });
  };
  return {
    kind: "Worksheet",
    ask: { name: () => sheet.name, id: () => sheet.id },
    reach: {
      protection: () => ({ kind: "Protection", ask: { protected: () => sheet.protected } }),
      freezePanes: () => ({
        kind: "FreezePanes",
        call: {
          freezeAt: ({ block }: { block: Block }) => {
            sheet.frozen = JSON.stringify(block);
          },
          freezeRows: (count: number) => {
            sheet.frozen = `rows ${count}`;
          },
        },
      }),
      autoFilter: () => ({
        kind: "AutoFilter",
        call: {
          apply: ({ block }: { block: Block }) => {
            sheet.filter = JSON.stringify(block);
          },
          remove: () => {
            sheet.filter = null;
          },
        },
      }),
      customProperties: () => ({
        kind: "CustomProperties",
        call: {
          add: (key: string, value: string) => {
            sheet.notes[key] = value;
            return noteNode(sheet, key);
          },
          getItemOrNullObject: (key: string) => noteNode(sheet, key),
        },
      }),
    },
    call: {
      getRangeByIndexes: (row: number, column: number, rows: number, columns: number) =>
        rows < 1 || columns < 1 || row + rows > 1_048_576 || column + columns > 16_384
          ? refuse("InvalidArgument", "range")
          : range({ row, column, rows, columns }),
      getRange: at,
      getCell: (row: number, column: number) => range({ row, column, rows: 1, columns: 1 }),
      getUsedRangeOrNullObject: () => {
        const used = usedBlock(sheet);
        return used && range(used);
      },
      activate: () => {
        book.active = { sheet: sheet.name, row: 0, column: 0 };
        events.selected();
      },
    },
  };
}

function noteNode(sheet: Sheet, key: string): Node | null {
  return key in sheet.notes ? { kind: "CustomProperty", ask: { value: () => sheet.notes[key] } } : null;
}

function rangeNode(book: Book, sheet: Sheet, block: Block, events: Events): Node & { block: Block } {
  const { row, column, rows, columns } = block;
  const each = <T>(ask: (row: number, column: number) => T) =>
    Array.from({ length: rows }, (_, r) => Array.from({ length: columns }, (_, c) => ask(row + r, column + c)));
  const matrix = (given: unknown): unknown[][] => {
    const isFitting = Array.isArray(given) && given.length === rows && given.every((one) => one.length === columns);
    return isFitting ? given : refuse("InvalidArgument", "the array is not shaped like the range");
  };
  const fill = (given: unknown, put: (row: number, column: number, one: never) => void) =>
    matrix(given).forEach((line, r) => {
      line.forEach((one, c) => {
        if (one !== null) put(row + r, column + c, one as never);
      });
    });
  return {
    kind: "Range",
    block,
    ask: {
      rowIndex: () => row,
      columnIndex: () => column,
      rowCount: () => rows,
      columnCount: () => columns,
      numberFormat: () => each((r, c) => formatAt(sheet, r, c)),
      values: () => each(valuesOf(book.sheets).bind(null, sheet)),
      formulas: () => {
        const value = valuesOf(book.sheets);
        return each((r, c) => sheet.cells[keyOf(r, c)]?.formula ?? value(sheet, r, c));
      },
    },
    reach: {
      worksheet: () => sheetNode(book, sheet, events),
      format: () => formatNode(sheet, block),
    },
    set: {
      numberFormat: (given: unknown) => {
        if (typeof given === "string" && columns === 1) sheet.columnFormats[column] = given;
        else fill(given, (r, c, format) => Object.assign(sheet.formats, { [keyOf(r, c)]: format }));
      },
      formulas: (given: unknown) => {
        fill(given, (r, c, entry: Value) => {
          const stored = entered(entry, formatAt(sheet, r, c));
          if (stored) sheet.cells[keyOf(r, c)] = stored;
          else delete sheet.cells[keyOf(r, c)];
        });
        events.changed(sheet.id);
      },
    },
    call: {
      select: () => {
        book.active = { sheet: sheet.name, row, column };
        events.selected();
      },
      // The proxies cut long arrays into rows by themselves.
      _ValidateArraySize: () => undefined,
      getRow: (index: number) => rangeNode(book, sheet, { row: row + index, column, rows: 1, columns }, events),
      getBoundingRect: ({ block: last }: { block: Block }) =>
        rangeNode(book, sheet, { row, column, rows: last.row - row + 1, columns }, events),
      group: () => void sheet.folds.push(`${column}-${column + columns - 1}`),
      hideGroupDetails: () => void sheet.closed.push(`${column}-${column + columns - 1}`),
      ungroup: () => {
        const index = sheet.folds.indexOf(`${column}-${column + columns - 1}`);
        if (index < 0) refuse("InvalidOperation", "not grouped");
        sheet.folds.splice(index, 1);
      },
    },
  };
}

function formatNode(sheet: Sheet, { row, column }: Block): Node {
  return {
    kind: "RangeFormat",
    set: { columnWidth: (points: number) => Object.assign(sheet.widths, { [column]: points }) },
    reach: {
      font: () => ({ kind: "RangeFont", set: { bold: () => undefined, color: () => undefined } }),
      fill: () => ({
        kind: "RangeFill",
        set: { color: (color: string) => Object.assign(sheet.fills, { [keyOf(row, column)]: color }) },
        call: { clear: () => void delete sheet.fills[keyOf(row, column)] },
      }),
    },
  };
}
