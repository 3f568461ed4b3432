import type { CanSection, Warning } from "../../part.js";
import { times } from "../../quantity/readValue.js";
import type { Words } from "../words/words.js";
import { amountsOf } from "./ratings.js";

/** The sections of a can with the voltage that they share, if they do. */
export type Can = {
  readonly sections: readonly CanSection[];
  readonly volts: number | null;
  readonly warnings: readonly Warning[];
};

/** A can printed as a list of capacitances and one of voltages: 40-40-20 mfd, 450-450-25 volts; letters come from the names. */
export function canOfList(
  farads: readonly number[],
  volts: readonly number[],
  names: readonly string[],
  printed: string,
): Can {
  const suffixes = lettersOf(names, farads.length);
  const perSection = farads.map((_, i) =>
    volts.length === farads.length ? volts[i]! : volts.length === 1 ? volts[0]! : null,
  );
  const clash = volts.length > 1 && volts.length !== farads.length && new Set(volts).size > 1;
  const text = `${farads.length} capacitances and ${volts.length} voltages: "${printed}"`;
  return {
    sections: farads.map((value, i) => ({
      suffix: suffixes[i] ?? null,
      farads: value,
      volts: clash ? null : perSection[i]!,
    })),
    volts: clash ? null : shared(perSection),
    warnings: clash ? [{ code: "conflict", text }] : [],
  };
}

/** The letters printed in the designators (C12A, C12B), when there is one for each section. */
function lettersOf(names: readonly string[], count: number): (string | null)[] {
  const letters = names.map((name) => /\d([A-Fa-f])$/.exec(name)?.[1] ?? null);
  return letters.length === count && letters.every((letter) => letter !== null) ? letters : [];
}

/** A can whose sections stand each behind its letter or mark, in one text. */
export function canOfLabels(words: Words, suffixOf: (label: string) => string): Can | null {
  const all = amountsOf(words, "volt");
  const sections = words.labels.map(({ label, from, to }): CanSection => {
    const inside = words.amounts.filter((amount) => amount.from >= from && amount.from < to);
    const farads = inside.flatMap((amount) => amount.figures).find((figure) => figure.unit?.measure === "farad");
    const volts = inside.flatMap((amount) => amount.figures).find((figure) => figure.unit?.measure === "volt");
    return {
      suffix: suffixOf(label),
      farads: farads ? times(farads.number, farads.unit!.factor) : null,
      volts: volts ? times(volts.number, volts.unit!.factor) : null,
    };
  });
  if (sections.filter((section) => section.farads !== null).length < 2) return null;
  const common = all.length === 1 ? times(all[0]!.figures[0]!.number, all[0]!.figures[0]!.unit!.factor) : null;
  const filled = sections.map((section) => ({ ...section, volts: section.volts ?? common }));
  const named = common === null ? filled : filled.map((section) => ({ ...section, volts: common }));
  return { sections: named, volts: shared(named.map((section) => section.volts)), warnings: [] };
}

/** A can listed as amounts one after the other, each with its own volts: "40 MFD, 450V; 20 MFD, 450V; 20 MFD, 25V". */
export function canOfPieces(words: Words, names: readonly string[]): Can | null {
  const farads = amountsOf(words, "farad").filter((amount) => amount.aside === null && amount.figures.length === 1);
  const volts = amountsOf(words, "volt").filter((amount) => amount.aside === null && amount.figures.length === 1);
  const suffixes = lettersOf(names, farads.length);
  if (farads.length < 2 || (suffixes.length === 0 && volts.length !== farads.length)) return null;
  const value = (amount: (typeof farads)[number]) => times(amount.figures[0]!.number, amount.figures[0]!.unit!.factor);
  return canOfList(farads.map(value), volts.map(value), names, words.text);
}

const GANGS: Readonly<Record<string, number>> = { two: 2, three: 3, four: 4, "2": 2, "3": 3, "4": 4, dual: 2, twin: 2 };

const EACH = /\b(?:each|ea|per)\.?\s+(?:section|sect|gang)\b|\b(?:each|ea)\b\.?(?=\s*(?:[,;]|$))/i;

/** A ganged or sectioned capacitor whose one value is said of each ("two-gang, 365 mmf each section"; "2 sect, 0.5 uf ea, 400 v"). */
export function canOfGang(
  text: string,
  value: number | null,
  volts: readonly number[],
  names: readonly string[],
): Can | null {
  const count = /\b(two|three|four|dual|twin|[234])[-\s]?(?:gang|section|sect|fach)/i.exec(text)?.[1];
  if (value === null || !count || !EACH.test(text)) return null;
  return canOfList(
    Array.from({ length: GANGS[count.toLowerCase()]! }, () => value),
    volts,
    names,
    text,
  );
}

/** The value that all share, or null. */
export function shared(values: readonly (number | null)[]): number | null {
  return new Set(values).size === 1 ? (values[0] ?? null) : null;
}
