import {
  keysOf,
  type RowOf,
  RULES_SHEET,
  type RulesRow,
  SETTING_WORDS,
  SETTINGS_SHEET,
  type SettingsRow,
  type Sheet,
  wordFor,
} from "../core/index.js";
import type { Change, Written } from "../hosts/host.js";
import type { Book } from "./book.js";
import type { Effect } from "./effects.js";
import type { View } from "./openSheet.js";
import { effectsBetween, type RuleBook, ruleBookOf } from "./rulesChange.js";
import type { Step } from "./step.js";
import { cellIn, patchRows, type RowCells } from "./writeSheet.js";

/** What was changed in Rules and Settings, in words, which parts it changes, and the way back. */
export type RulesChanged = {
  readonly what: readonly string[];
  readonly effects: readonly Effect[];
  readonly back: Step;
};

type Changed<S extends Sheet> = {
  readonly id: string;
  readonly key: keyof S["columns"] & string;
  readonly was: Written;
  readonly said: string;
};

const idOfRule = ({ scope, id }: RulesRow) => `${scope} ${id}`;
const idOfSetting = ({ key }: SettingsRow) => key ?? "";
const nameOfRule = (row: RulesRow) => row.label ?? idOfRule(row);
const nameOfSetting = ({ key }: SettingsRow) => wordFor(SETTING_WORDS, key ?? "");
const inWords = (cell: Written) => (cell === "" || cell === null ? "nothing" : String(cell));

/** The cells that differ, rows matched by their ids: sorting and inserting change nothing. */
function cellsChanged<S extends Sheet>(
  sheet: S,
  [before, after]: readonly [readonly RowOf<S>[], readonly RowOf<S>[]],
  idOf: (row: RowOf<S>) => string,
  nameOf: (row: RowOf<S>) => string,
): readonly Changed<S>[] {
  const old = new Map(before.map((row) => [idOf(row), row]));
  return after.flatMap((row) => {
    const before = old.get(idOf(row));
    if (!before) return [];
    return keysOf(sheet).flatMap((key) => {
      const [was, will] = [cellIn(sheet, key, before), cellIn(sheet, key, row)];
      const said = `${nameOf(row)}, ${sheet.columns[key]!.head}: ${inWords(was)} becomes ${inWords(will)}`;
      return was === will ? [] : [{ id: idOf(row), key, was, said }];
    });
  });
}

/** Rows that only one of two states has, by their names. */
const onlyIn = (these: readonly RulesRow[], those: readonly RulesRow[]): readonly string[] => {
  const ids = new Set(those.map(idOfRule));
  return these.filter((row) => !ids.has(idOfRule(row))).map(({ label, id }) => label ?? id ?? "");
};

/**
 * What became of Rules and Settings since they were looked at, whoever changed them and where; null where all is the same.
 *
 * @param before As they were; nothing is told of a workbook that had none.
 */
export function rulesChangedSince(book: Book, before: RuleBook): RulesChanged | null {
  const after = ruleBookOf(book);
  if (before.rules.length === 0 || after.rules.length === 0) return null;
  const rules = cellsChanged(RULES_SHEET, [before.rules, after.rules], idOfRule, nameOfRule);
  const settings = cellsChanged(SETTINGS_SHEET, [before.settings, after.settings], idOfSetting, nameOfSetting);
  const what = [
    ...[...rules, ...settings].map(({ said }) => said),
    ...onlyIn(after.rules, before.rules).map((name) => `${name} is new`),
    ...onlyIn(before.rules, after.rules).map((name) => `${name} is gone`),
  ];
  if (what.length === 0) return null;
  return { what, effects: effectsBetween(book, before, after), back: backStep(book, rules, settings) };
}

/** Cells as they were, for the rows of a sheet that they belong to. */
function patchesBack<S extends Sheet>(
  view: View<S> | null,
  changed: readonly Changed<S>[],
  idOf: (row: RowOf<S>) => string,
): readonly Change[] {
  if (!view) return [];
  const patches = view.rows.flatMap(({ at, values }) =>
    changed
      .filter(({ id }) => id === idOf(values))
      .map(({ key, was }) => ({ at, cells: { [key]: was } as RowCells<S> })),
  );
  return patchRows(view, patches);
}

/** Writes changed cells back as they were. */
function backStep(
  book: Book,
  rules: readonly Changed<typeof RULES_SHEET>[],
  settings: readonly Changed<typeof SETTINGS_SHEET>[],
): Step {
  return {
    name: "Take the change of the rules back",
    changes: [...patchesBack(book.rules, rules, idOfRule), ...patchesBack(book.settings, settings, idOfSetting)],
    overwrites: [],
    notes: [],
  };
}
