import { fold } from "./fold.js";
import { countsInFigures } from "./prices.js";
import { remembering, shapeOf } from "./remember.js";

/** A minimum or a multiple that a note states: so many sales units, or so many pieces. */
export type SaidCount = { readonly count: number; readonly of: "units" | "pieces" };

/** What may stand before the count of a minimum, in English, French, Dutch and German. */
const LEAST =
  "(?:min(?:\\.|imum|imal[e]?)?[ -]*(?:order(?: qty| quantity)?|qty|quantity|purchase|buy|bestell?(?:ung|menge|ing)?|abnahme(?:menge)?|afname|commande|de commande|quantite)?(?: of| von| van| de)?|mindest(?:ens|abnahme|bestell(?:ung|menge)|menge)|(?:order |sold |please order |you must order )?at least|no fewer than|au moins|minstens|(?:abgabe |verkauf )?(?:erst )?ab)";

/** What may stand before the count of a multiple. */
const STEPS =
  "(?:(?:in |only in |sold in |nur in )?(?:multiples? (?:of|de|van)|steps of|lots of|veelvoud(?:en)? van|vielfachen? (?:von|zu)|schritten von)|par multiples? de|nur (?:zu|in|je)(?: ve| packungen| beuteln)?(?: zu| von| a)?|(?:uitsluitend |alleen )?per veelvoud van)";

const UNITS =
  "(packs?|pkgs?|packets?|bags?|boxes|box|units?|ve|vpe|beutel|packung(?:en)?|sachets?|paquets?|zakjes?|pakjes?|doosjes?)";
const PIECES = "(pcs?|pieces?|st\\.?|stk\\.?|stuck|stuks?|off|ea(?:ch)?)";
/** Sums of money and ratings are no counts. */
const NO_COUNT =
  "(?![\\d.,/]*\\s*(?:€|\\$|£|eur|usd|gbp|chf|dollars?|pounds?|%|w\\b|watt|v\\b|volts?|k\\b|ohm|ω|[munpµ]f|ma?\\b|mm|°))";
const BEFORE = "(?<![€$£\\d])(?:€|\\$|£)?";

const counted = (words: string) =>
  new RegExp(`(?<![\\w])${words}\\s*:?\\s*${BEFORE}(\\d{1,5})\\b${NO_COUNT}\\s*(?:${UNITS}|${PIECES})?`);
const MINIMUM = counted(LEAST);
const MULTIPLE = counted(STEPS);

function said(pattern: RegExp, text: string): SaidCount | null {
  const found = pattern.exec(countsInFigures(fold(text)));
  const count = Number(found?.[1]);
  if (!found || !(count > 0) || /[€$£]\s*\d+$/.test(found[0])) return null;
  return { count, of: found[3] ? "pieces" : "units" };
}

/** Which of the two a text of some shape may state. */
const statedBy = remembering((shape) => {
  const words = countsInFigures(fold(shape));
  return { minimum: MINIMUM.test(words), multiple: MULTIPLE.test(words) };
});

/** The least that a note says may be ordered. @example minimumSaid("min order 2 packs") // { count: 2, of: "units" } */
export const minimumSaid = (note: string): SaidCount | null =>
  statedBy(shapeOf(note)).minimum ? said(MINIMUM, note) : null;

/** In what steps a note says it is sold. @example multipleSaid("nur zu 10 Stück") // { count: 10, of: "pieces" } */
export const multipleSaid = (note: string): SaidCount | null =>
  statedBy(shapeOf(note)).multiple ? said(MULTIPLE, note) : null;
