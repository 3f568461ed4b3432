import {
  OWN_SETTINGS,
  PROJECTS_SHEET,
  problemText,
  RULES_SHEET,
  readSetting,
  SETTING_WORDS,
  SETTINGS_SHEET,
  type Sheet,
  settingWants,
  wordFor,
} from "../core/index.js";
import type { Book } from "./book.js";
import type { View, ViewRow } from "./openSheet.js";

const told = (at: string, given: string, wanted: string) => problemText({ code: "unreadable", given, wanted, at });

/** What a person typed into a row that its columns can't read, each with what would have worked. */
export function unreadIn<S extends Sheet>(sheet: S, row: ViewRow<S>, name: string): readonly string[] {
  return Object.entries(row.unread as Record<string, string>).map(([key, text]) => {
    const { head, wants } = sheet.columns[key]!;
    return told(`${name}, ${head}`, text, wants);
  });
}

const ofAll = <S extends Sheet>(sheet: S, view: View<S> | null, nameOf: (row: ViewRow<S>) => string | null) =>
  (view?.rows ?? []).flatMap((row) => unreadIn(sheet, row, nameOf(row) ?? sheet.name));

/** A setting at what it can't be, told; nothing where it can. */
function unreadSetting(key: string, text: string, place = wordFor(SETTING_WORDS, key)): readonly string[] {
  if (readSetting(key, text) !== null) return [];
  return [told(place, text, `${settingWants(key)} Until then the default holds.`)];
}

const unreadSettings = ({ settings }: Book): readonly string[] =>
  (settings?.rows ?? []).flatMap(({ values: { key, setting } }) =>
    key === null || setting === null ? [] : unreadSetting(key, setting),
  );

/** Set cards with settings of their own that can't be. */
const unreadCards = ({ projects }: Book): readonly string[] =>
  (projects?.rows ?? []).flatMap(({ values }) =>
    Object.entries(OWN_SETTINGS).flatMap(([column, key]) => {
      const value = values[column as keyof typeof OWN_SETTINGS];
      const { head } = PROJECTS_SHEET.columns[column as keyof typeof OWN_SETTINGS];
      return value === null ? [] : unreadSetting(key, String(value), `${values.name ?? values.short}, ${head}`);
    }),
  );

/** What stands in Rules, Settings and on the set cards that can't be read, each with what would have worked. */
export function unreadRules(book: Book): readonly string[] {
  return [
    ...ofAll(RULES_SHEET, book.rules, ({ values }) => values.label ?? values.id),
    ...ofAll(SETTINGS_SHEET, book.settings, () => null),
    ...unreadSettings(book),
    ...ofAll(PROJECTS_SHEET, book.projects, ({ values }) => values.name ?? values.short),
    ...unreadCards(book),
  ];
}
