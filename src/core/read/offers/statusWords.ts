/** TABLE: what vendors write of a part's supply, in English, French, Dutch and German; folded text. */

import type { Status } from "../../offer.js";

/** What a phrase says of the supply; the first row that fits wins, so that the end of a part outranks its stock. */
export const STATUS_WORDS: readonly (readonly [status: Status, phrase: RegExp])[] = [
  ["in-stock", /not for new design|nrnd|\bnfnd\b/],
  [
    "discontinued",
    /discontinu|obsolete|no longer (carried|made|available|stocked|produced|supplied|manufactured)|end of life|\beol\b|not made any ?more|out of production|plus (fabrique|produit|suivi|disponible|au catalogue|livrable)|arrete|abandonne|niet meer|uit productie|uit assortiment|nicht mehr|eingestellt|abgekundigt|ausgelaufen|gestrichen|vervallen|supprime/,
  ],
  [
    "last-time-buy",
    /last[- ]time[- ]buy|\bltb\b|(?<!used (the|my) )last (few|ones?|two|three|four|five|pieces?|pcs|stock|\d+)|(one|two|three|four|five|few|\d+) (only )?left|while (they|stocks?|supplies|it) lasts?|fin de (serie|stock)|dernier(e)?s?\b|laatste|restant|restpartij|restposten|restbestand|restmenge|auslauf|letzte|solange (der )?vorrat|zolang de voorraad|jusqu'a epuisement|close-?out|clearance|\bop=op\b|abverkauf|uitloop|destockage/,
  ],
  [
    "out-of-stock",
    /sold[- ]?out|^sold$|out[- ]of[- ]stock|no stock|not in stock|none in stock|back[- ]?order|on (back)?order|lead[- ]?time|unavailable|not available|temporarily|awaiting|due (in|back|mid|end|early|\d)|epuise|en rupture|\brupture\b|sur commande|en commande|indisponible|non disponible|pas en stock|en reappro|delai|uitverkocht|niet (op )?(voorraad|leverbaar)|op bestelling|in bestelling|\bbesteld\b|levertijd|tijdelijk|naleveren|ausverkauft|vergriffen|nicht (auf |am )?(lager|lieferbar|verfugbar|vorratig)|lieferzeit|auf bestellung|bestellt|nachbestell|zurzeit|derzeit|zur zeit|fehlt|used the last|all gone|^(out|none|nil|no|non|nee|nein|x)\b/,
  ],
  [
    "in-stock",
    /\bactive\b|\bactif\b|\baktiv\b|\bactief\b|in stock|en stock|op voorraad|auf lager|ab lager|lagernd|vorratig|lieferbar|leverbaar|verfugbar|disponible|beschikbaar|available|sofort|\bnew product\b|^(yes|oui|ja)\b/,
  ],
];

/** Phrases plain enough to be believed in a description, where "out" and "last" may mean anything. */
export const PLAIN_SUPPLY =
  /sold[- ]?out|out of stock|discontinued|obsolete|no longer (made|available|carried)|back[- ]?ordered|epuise|en rupture|fin de serie|plus fabrique|uitverkocht|niet meer leverbaar|laatste stuks|ausverkauft|vergriffen|nicht mehr lieferbar|restposten|auslaufartikel/;
