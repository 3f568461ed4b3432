import { SETTINGS, SETTINGS_SHEET, type Spares } from "../core/index.js";
import type { Book } from "./book.js";
import { nothingToDo, type Step } from "./step.js";
import { addRows, patchRows } from "./writeSheet.js";

const KINDS = ["resistor", "capacitor", "other"] as const;

/** The setting that holds the spares of a kind, in percent. */
export const sparesKey = (kind: keyof Spares): string => `spares_${kind}_pct`;

/** Keeps spares in the sheet Settings, for all orders to come. */
export function keepSparesStep({ settings }: Book, spares: Spares): Step {
  if (!settings) return nothingToDo("Settings get their sheet with the first list");
  const percents = KINDS.map((kind) => ({
    key: sparesKey(kind),
    setting: String(Math.round(spares[kind] * 1000) / 10),
  }));
  const there = percents.flatMap(({ key, setting }) => {
    const row = settings.rows.find(({ values }) => values.key === key);
    return row ? [{ at: row.at, cells: { setting } }] : [];
  });
  const missing = percents.filter(({ key }) => settings.rows.every(({ values }) => values.key !== key));
  const added = missing.map(({ key, setting }) => {
    const usual = SETTINGS.find((each) => each.key === key);
    return { key, setting, unit: "%", meaning: usual?.meaning ?? "" };
  });
  return {
    name: "Keep these spares for all orders",
    changes: [...patchRows(settings, there), ...(added.length > 0 ? addRows(settings, SETTINGS_SHEET, added) : [])],
    overwrites: [],
    notes: [],
  };
}
