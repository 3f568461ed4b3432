import { inExcel } from "./excelErrors.js";
import { readExcelSheet } from "./excelRead.js";
import { writeToExcel } from "./excelWrite.js";
import type { Host, Marked, Place } from "./host.js";

/** Excel behind the host's door, through Office.js. Needs `Office.onReady` to have happened. */
export function excelHost(): Host {
  return {
    sheets: () => inExcel(sheetNames),
    read: (sheet) => inExcel((context) => readExcelSheet(context, sheet)),
    write: (changes) => inExcel((context) => writeToExcel(context, changes), true),
    selection: () => inExcel(placeIn),
    marked: () => inExcel(markedIn),
    select: (place) => inExcel((context) => moveTo(context, place)),
    onSelect: (listener) =>
      listening((context, hear) => context.workbook.onSelectionChanged.add(hear), onceEach(listener)),
    onChange: (listener) =>
      listening<Excel.WorksheetChangedEventArgs>(
        (context, hear) => context.workbook.worksheets.onChanged.add(hear),
        async ({ worksheetId }) => {
          const name = await inExcel((context) => nameOf(context, worksheetId));
          if (name !== null) listener(name);
        },
      ),
  };
}

async function sheetNames(context: Excel.RequestContext): Promise<readonly string[]> {
  const { worksheets } = context.workbook;
  worksheets.load("items/name");
  await context.sync();
  return worksheets.items.map((sheet) => sheet.name);
}

async function placeIn(context: Excel.RequestContext): Promise<Place> {
  const cell = context.workbook.getActiveCell();
  cell.load("rowIndex,columnIndex,worksheet/name");
  await context.sync();
  return { sheet: cell.worksheet.name, row: cell.rowIndex, column: cell.columnIndex };
}

const SPAN = "worksheet/name,areas/items/rowIndex,areas/items/rowCount";

/** Asked of one row alone, Excel's visible cells may be those of the whole sheet: one row is taken as it is. */
async function markedIn(context: Excel.RequestContext): Promise<Marked> {
  const selected = context.workbook.getSelectedRanges();
  const visible = selected.getSpecialCellsOrNullObject("Visible");
  selected.load(SPAN);
  visible.load(SPAN);
  await context.sync();
  const { items } = selected.areas;
  const isOneRow = items.length === 1 && items[0]?.rowCount === 1;
  const areas = visible.isNullObject || isOneRow ? items : visible.areas.items;
  const spans = areas.map(({ rowIndex, rowCount }) => ({ first: rowIndex, last: rowIndex + rowCount - 1 }));
  return { sheet: selected.worksheet.name, spans };
}

async function moveTo(context: Excel.RequestContext, place: Place): Promise<void> {
  const sheet = context.workbook.worksheets.getItem(place.sheet);
  sheet.activate();
  sheet.getCell(place.row, place.column).select();
  await context.sync();
}

async function nameOf(context: Excel.RequestContext, worksheetId: string): Promise<string | null> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(worksheetId);
  sheet.load("name");
  await context.sync();
  return sheet.isNullObject ? null : sheet.name;
}

/** Excel tells of a sheet brought to the front and of a cell selected in it, one after the other: once is enough. */
function onceEach(listener: (place: Place) => void): () => Promise<void> {
  let last = "";
  return async () => {
    const place = await inExcel(placeIn);
    if (JSON.stringify(place) === last) return;
    last = JSON.stringify(place);
    listener(place);
  };
}

type Registration = { readonly context: OfficeExtension.ClientRequestContext; remove(): void };

/** Adds a handler, which takes Excel a moment; what stops it waits for that. */
function listening<Event>(
  add: (context: Excel.RequestContext, hear: (event: Event) => Promise<void>) => Registration,
  hear: (event: Event) => Promise<void>,
): () => void {
  const added = Excel.run(async (context) => {
    const registration = add(context, hear);
    await context.sync();
    return registration;
  });
  return () =>
    void added.then((registration) => {
      registration.remove();
      return registration.context.sync();
    });
}
