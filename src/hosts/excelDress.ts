import { rangeOf } from "./addresses.js";
import type { Change } from "./host.js";
import { columnGroups, HEAD_INK, TINTS } from "./tints.js";

type LookChange = Extract<Change, { kind: "look" }>;

/** Excel counts widths in points. */
const POINTS_PER_PIXEL = 0.75;

/** Under this key a sheet remembers which columns we folded together: Excel does not tell. */
const FOLDS = "underchassis.folds";

/** Dresses a structured sheet: head row, widths, frozen panes, folds, filter buttons. */
export async function dressSheet(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  look: LookChange,
): Promise<void> {
  const width = look.columns.length;
  if (width === 0) return;
  look.columns.forEach((column, i) => {
    const head = sheet.getRangeByIndexes(0, i, 1, 1);
    head.format.columnWidth = column.width * POINTS_PER_PIXEL;
    if (column.tint) head.format.fill.color = TINTS[column.tint];
    else head.format.fill.clear();
  });
  const heads = sheet.getRangeByIndexes(0, 0, 1, width);
  heads.format.font.bold = true;
  heads.format.font.color = HEAD_INK;
  if (look.frozenColumns > 0) sheet.freezePanes.freezeAt(sheet.getRangeByIndexes(0, 0, 1, look.frozenColumns));
  else sheet.freezePanes.freezeRows(1);
  await foldColumns(context, sheet, look);
  await setFilter(context, sheet, look);
}

async function foldColumns(context: Excel.RequestContext, sheet: Excel.Worksheet, look: LookChange): Promise<void> {
  const groups = columnGroups(look.columns).map(({ start, end, folded }) => ({
    range: rangeOf({ left: start, right: end, top: 0, bottom: 0 }),
    folded,
  }));
  const wanted = groups.map(({ range }) => range);
  const kept = sheet.customProperties.getItemOrNullObject(FOLDS);
  kept.load("value");
  await context.sync();
  const before = kept.isNullObject || kept.value === "" ? [] : kept.value.split(",");
  if (before.join() === wanted.join()) return;
  for (const range of before) sheet.getRange(range).ungroup(Excel.GroupOption.byColumns);
  for (const { range, folded } of groups) {
    sheet.getRange(range).group(Excel.GroupOption.byColumns);
    if (folded) sheet.getRange(range).hideGroupDetails(Excel.GroupOption.byColumns);
  }
  sheet.customProperties.add(FOLDS, wanted.join());
}

async function setFilter(context: Excel.RequestContext, sheet: Excel.Worksheet, look: LookChange): Promise<void> {
  if (!look.filter) {
    sheet.autoFilter.remove();
    return;
  }
  const used = sheet.getUsedRangeOrNullObject(true);
  used.load("rowIndex,rowCount");
  await context.sync();
  const rows = used.isNullObject ? 2 : Math.max(2, used.rowIndex + used.rowCount);
  sheet.autoFilter.apply(sheet.getRangeByIndexes(0, 0, rows, look.columns.length));
}
