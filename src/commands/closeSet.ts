import { headsOf, type Origin, PARTS_SHEET, readFrom, writeFrom } from "../core/index.js";
import type { Written } from "../hosts/host.js";
import type { Book } from "./book.js";
import { editSetStep } from "./editSet.js";
import { LIVE_KEYS } from "./liveFormula.js";
import type { View, ViewRow } from "./openSheet.js";
import { counted, nothingToDo, type Step } from "./step.js";
import { patchRows, type RowCells } from "./writeSheet.js";

type Parts = typeof PARTS_SHEET;

/** Columns whose words are long and rest on the others: their values stay, their origin is not kept. */
const WITHOUT_ORIGIN: readonly string[] = ["because", "look"];

/** The live cells of a row as values, and in `from` what we wrote, so that a cell typed over later is still known. */
function asValues({ values, formulas }: ViewRow<Parts>): RowCells<Parts> {
  const live = LIVE_KEYS.filter((key) => formulas[key] !== undefined);
  const cells = live.map((key) => [key, (values[key] ?? "") as Written] as const);
  const origins = live
    .filter((key) => values[key] !== null && !WITHOUT_ORIGIN.includes(key))
    .map(
      (key): Origin => ({ head: PARTS_SHEET.columns[key].head, text: String(values[key]), from: "default", at: "" }),
    );
  const heads = new Set(origins.map(({ head }) => head));
  const kept = readFrom(values.from, headsOf(PARTS_SHEET)).filter(({ head }) => !heads.has(head));
  const rules = formulas.rules === undefined ? {} : { rules: values.rules ?? "" };
  return { ...Object.fromEntries(cells), ...rules, from: writeFrom([...kept, ...origins]) };
}

/** Turns the live formulas of some rows into their values: the file then opens anywhere. */
export function valuesStep(parts: View<Parts>, rows: readonly ViewRow<Parts>[]): Step {
  const live = rows.filter(({ formulas }) => Object.keys(formulas).length > 0);
  if (live.length === 0) return nothingToDo("Nothing here is live");
  const changes = patchRows(
    parts,
    live.map((row) => ({ at: row.at, cells: asValues(row) })),
  );
  return { name: `Turn ${counted(live.length, "row")} into values`, changes, overwrites: [], notes: [] };
}

/** Closes a finished set: its formulas become values, its rules stay as they were, its card says closed. */
export function closeSetStep(book: Book, short: string): Step {
  const { parts, projects } = book;
  const project = projects?.rows.find(({ values }) => values.short === short);
  if (!parts || !project) return nothingToDo("No such set");
  const values = valuesStep(
    parts,
    parts.rows.filter((row) => row.values.project === short),
  );
  const rules = project.values.rules ?? "";
  const card = editSetStep(book, short, { state: "closed", rules });
  return { ...values, name: `Close ${short}: ${values.name}`, changes: [...values.changes, ...card.changes] };
}
