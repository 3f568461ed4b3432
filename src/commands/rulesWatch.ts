import { RULES_SHEET, type RulesRow, SETTINGS_SHEET, type SettingsRow } from "../core/index.js";
import type { Book } from "./book.js";
import type { Effect } from "./effects.js";
import { effectsBetween, type RuleBook, ruleBookOf } from "./rulesChange.js";
import type { Step } from "./step.js";
import { patchRows, type RowCells } from "./writeSheet.js";

/** What was changed in Rules and Settings, in words, which parts it changes, and the way back. */
export type RulesChanged = {
  readonly what: readonly string[];
  readonly effects: readonly Effect[];
  readonly back: Step;
};

type Cells = Readonly<Record<string, unknown>>;
type Changed = {
  readonly name: string;
  readonly head: string;
  readonly key: string;
  readonly id: string;
  readonly was: unknown;
  readonly will: unknown;
};

const idOfRule = ({ scope, id }: RulesRow) => `${scope} ${id}`;
const idOfSetting = ({ key }: SettingsRow) => key ?? "";
const said = (value: unknown) => (value === null || value === undefined || value === "" ? "nothing" : String(value));

/** The cells that differ, rows matched by their ids: sorting and inserting change nothing. */
function cellsChanged<R extends Cells>(
  before: readonly R[],
  after: readonly R[],
  idOf: (row: R) => string,
  columns: Readonly<Record<string, { readonly head: string }>>,
): readonly Changed[] {
  const old = new Map(before.map((row) => [idOf(row), row]));
  return after.flatMap((row) => {
    const was = old.get(idOf(row));
    if (!was) return [];
    const keys = Object.keys(columns).filter((key) => said(was[key]) !== said(row[key]));
    const name = String(row.label ?? row.key ?? idOf(row));
    return keys.map((key) => ({ name, head: columns[key]!.head, key, id: idOf(row), was: was[key], will: row[key] }));
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
  const rules = cellsChanged(before.rules, after.rules, idOfRule, RULES_SHEET.columns);
  const settings = cellsChanged(before.settings, after.settings, idOfSetting, SETTINGS_SHEET.columns);
  const what = [
    ...[...rules, ...settings].map(
      ({ name, head, was, will }) => `${name}, ${head}: ${said(was)} becomes ${said(will)}`,
    ),
    ...onlyIn(after.rules, before.rules).map((name) => `${name} is new`),
    ...onlyIn(before.rules, after.rules).map((name) => `${name} is gone`),
  ];
  if (what.length === 0) return null;
  return { what, effects: effectsBetween(book, before, after), back: backStep(book, rules, settings) };
}

/** Writes changed cells back as they were. */
function backStep(book: Book, rules: readonly Changed[], settings: readonly Changed[]): Step {
  const cellsOf = ({ key, was }: Changed) => ({ [key]: was === true ? "yes" : (was ?? "") });
  const rulePatches = (book.rules?.rows ?? []).flatMap(({ at, values }) =>
    rules
      .filter(({ id }) => id === idOfRule(values))
      .map((each) => ({ at, cells: cellsOf(each) as RowCells<typeof RULES_SHEET> })),
  );
  const settingPatches = (book.settings?.rows ?? []).flatMap(({ at, values }) =>
    settings
      .filter(({ id }) => id === idOfSetting(values))
      .map((each) => ({ at, cells: cellsOf(each) as RowCells<typeof SETTINGS_SHEET> })),
  );
  return {
    name: "Take the change of the rules back",
    changes: [
      ...(book.rules ? patchRows(book.rules, rulePatches) : []),
      ...(book.settings ? patchRows(book.settings, settingPatches) : []),
    ],
    overwrites: [],
    notes: [],
  };
}
