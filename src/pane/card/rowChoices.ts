import type { ViewRow } from "../../commands/openSheet.js";
import { isToDecide } from "../../commands/overview.js";
import type { PARTS_SHEET, PartsRow } from "../../core/index.js";

type PartRow = ViewRow<typeof PARTS_SHEET>;

/** A way to choose rows together: "all resistors of 470 k". */
export type RowChoice = { readonly id: string; readonly name: string; readonly rows: readonly PartRow[] };

/** Kinds of which one asks what they do. */
const WITH_USE = ["resistor", "capacitor"];

/** Rows alike that one wants to say something of together: those that wait, those of open use, of one value, of one section. */
export function rowChoices(rows: readonly PartRow[]): readonly RowChoice[] {
  const used = rows.filter(({ values }) => WITH_USE.includes(values.kind ?? ""));
  const bySize = [...used].sort((a, b) => (a.values.size ?? 0) - (b.values.size ?? 0));
  const open = used.filter(({ values }) => values.usedAs === null);
  const waiting = rows.filter(({ values }) => isToDecide(values));
  const all = [
    { id: "waiting", name: "that wait for you to decide", rows: waiting },
    { id: "open", name: "whose use is not known", rows: open },
    ...groups("of", bySize, ({ kind, value }) => value && `${kind}s of ${value}`),
    ...groups("in", used, ({ kind, section }) => section && `${kind}s in ${section}`),
  ];
  return all.filter((choice) => choice.rows.length > 0);
}

function groups(id: string, rows: readonly PartRow[], nameOf: (row: PartsRow) => string | null): RowChoice[] {
  const named = new Map<string, PartRow[]>();
  for (const row of rows) {
    const name = nameOf(row.values);
    if (!name) continue;
    const alike = named.get(name);
    if (alike) alike.push(row);
    else named.set(name, [row]);
  }
  return [...named].flatMap(([name, alike]) => (alike.length > 1 ? [{ id: `${id} ${name}`, name, rows: alike }] : []));
}
