import { fold, saysNothing } from "./fold.js";
import { remembering, shapeOf } from "./remember.js";

const NO_PART: readonly (readonly [reason: string, pattern: RegExp])[] = [
  ["a spreadsheet's error stands here", /#(n\/a|value!|div\/0!|ref!|name\?|null!|num!)|####/],
  [
    "an assortment of values",
    /assort|sortiment|grab ?-?bag|wundertut|konvolut|surprise|shoe ?box|junk ?box|mixed (lot|bag|values|box)|\bmixed\b.*\b(lot|bag|resistors|capacitors|parts)|\b(box|bag|jar|tin|tray) of (mixed|old|odd|used)\b|gemischt|gemengd|melange|\bodds\b|\bdivers(e|es|er|en)?\b|verschiedene werte|valeurs (diverses|melangees)|\b\d+ (values|valeurs|waarden|werte)\b|restekiste|collection of|kollektion/,
  ],
  [
    "a kit",
    /\b(re-?cap|repair|service|resistor|capacitor|cap|condenser|starter)?[- ]?kits?\b(?!chen)|\bkit (de|d')|bausatz|bouwpakket|reparatursatz|herstelset/,
  ],
  [
    "it points elsewhere",
    /\b(see|voir|zie|siehe|cf\.?)\b.{0,12}\b(page|pages|p\.|blz|pagina|seite|s\.|catalog|katalog|list|liste|lijst|website|insert|beilage|bijlage)|\b(send|mail|write|ask) (us|for)\b|we quote|auf anfrage|sur demande|op aanvraag|price on request/,
  ],
  ["it cannot be read", /\?\?|\d_|_\d|\.\d*_|\w\?\w|\ufffd|[*#]{4,}\d|illegible|illisible|onleesbaar|unleserlich/],
];

/** Why a row's words make no offer: an assortment, a kit, a note, damage; null where nothing speaks against it. */
export function noOfferBecause(description: string, stockNumber: string | null): string | null {
  if (saysNothing(description) || !/\p{L}{2}|\d/u.test(description)) return "nothing is described here";
  const damaged = damageOf(shapeOf(description)).reason;
  if (damaged) return damaged;
  return stockNumber && /\?\?/.test(stockNumber) ? "its number cannot be read" : null;
}

const damageOf = remembering((shape) => {
  const words = fold(shape);
  return { reason: NO_PART.find(([, pattern]) => pattern.test(words))?.[0] };
});

/**
 * Whether a row is a heading or a note: it says one thing only, and neither a price nor a number stands beside it.
 *
 * @param filled The cells of the row that say something.
 */
export function isHeading(
  filled: readonly string[],
  hasNumber: boolean,
  hasPrice: boolean,
  isPlainList: boolean,
): boolean {
  if (filled.length !== 1 || hasNumber || hasPrice) return false;
  return !isPlainList || /^[\W_]*[^\d]*[\W_]*$/.test(filled[0]!);
}
