import type { Kind } from "../../part.js";
import type { Measure } from "../../quantity/notation/units.js";
import { times } from "../../quantity/readValue.js";
import type { Amount, Words } from "../words/words.js";
import { ofRoles, type Text } from "./texts.js";

/** Amounts of one measure in a text that are the part's own ratings. */
export function amountsOf(words: Words, measure: Measure): Amount[] {
  return words.amounts.filter((amount) => amount.figures[0]!.unit?.measure === measure);
}

/** Volts that a part is tested with say nothing of what it bears at work. */
const TESTED: ReadonlySet<string> = new Set(["test", "essai", "prüfspannung"]);

const HIGHEST_PEAK = 1.4;

/** The figures of a rating as read, base units; `repaired` when a letter had to be read as a figure. */
export type ReadRating = { readonly figures: readonly number[]; readonly repaired: boolean };

const UNRATED: ReadRating = { figures: [], repaired: false };

/** The figures of a rating; of working and peak with a stroke (350/385 V) the working one. */
function inUnits(words: Words, amount: Amount, factor = 1): ReadRating {
  const figures = amount.figures.map((figure) => times(figure.number, figure.unit?.factor ?? factor));
  const [first = 0, second = 0] = figures;
  const isPeak = amount.joiner === "/" && figures.length === 2 && second > first && second <= first * HIGHEST_PEAK;
  const repaired = words.tokens.slice(amount.from, amount.to).some((token) => token.repaired);
  return { figures: isPeak ? [first] : figures, repaired };
}

/**
 * The figures of a rating (watts or volts) that a part states: of its own column, else of the first text that has it.
 *
 * Two figures with a stroke are working and peak: both come back, the caller takes the first. A span ("6-8 V" of a lamp)
 * is no one rating.
 */
export function ratingOf(texts: readonly Text[], column: "watts" | "volts", kind: Kind): ReadRating {
  const measure = column === "watts" ? "watt" : "volt";
  const isOne = (amount: Amount) => kind === "capacitor" || amount.join !== "range";
  const columns = ofRoles(texts, column).flatMap(({ words, head }) => {
    const amount = words.amounts.find(
      (own) => !TESTED.has(own.aside ?? "") && (own.figures[0]!.unit?.measure ?? measure) === measure && isOne(own),
    );
    return amount ? [inUnits(words, amount, head?.factor)] : [];
  });
  if (columns.length > 0) return together(columns);
  const remarks =
    column === "volts" && (kind === "resistor" || kind === "potentiometer") ? [] : ofRoles(texts, "remarks");
  for (const { words } of [
    ...ofRoles(texts, "rating", column === "watts" ? "volts" : "watts", "description", "value"),
    ...remarks,
  ]) {
    const amounts = amountsOf(words, measure).filter(isOne);
    const own =
      amounts.find((amount) => amount.aside === null) ??
      amounts.find((amount) => amount.aside === "brackets") ??
      amounts.find((amount) => amount.aside === "peak" || amount.aside === "surge");
    if (own) return inUnits(words, own);
  }
  const stroke = column === "volts" && kind === "capacitor" ? behindStroke(texts) : null;
  return stroke ?? bareRating(texts, column, kind);
}

/** The ratings of several columns, one for each section of a can. */
const together = (ratings: readonly ReadRating[]): ReadRating => ({
  figures: ratings.flatMap(({ figures }) => figures),
  repaired: ratings.some(({ repaired }) => repaired),
});

/** ".05/400", "20-20/150": a bare number behind a stroke is the volts. */
function behindStroke(texts: readonly Text[]): ReadRating | null {
  for (const { words } of ofRoles(texts, "value", "description", "rating")) {
    const amount = words.amounts.find(
      ({ from, figures }) =>
        figures[0]!.unit === null &&
        words.tokens[from - 1]?.text === "/" &&
        words.amounts.some((before) => before.to === from - 1),
    );
    if (amount) return inUnits(words, amount);
  }
  return null;
}

/** A bare number in a column of ratings: volts of a capacitor, watts of a resistor ("35" between two "35VDC"). */
function bareRating(texts: readonly Text[], column: "watts" | "volts", kind: Kind): ReadRating {
  const fits = column === "volts" ? kind === "capacitor" : kind === "resistor" || kind === "potentiometer";
  const hasValue = texts.some((text) => text.role === "value" || text.role === "description");
  if (!fits || !hasValue) return UNRATED;
  for (const { words } of ofRoles(texts, "rating")) {
    const [amount, more] = words.amounts;
    if (
      amount &&
      !more &&
      amount.figures.every(({ unit }) => unit === null) &&
      amount.from === 0 &&
      words.tokens.length === amount.to
    )
      return inUnits(words, amount);
  }
  return UNRATED;
}
