/** TABLE: the heads of vendors' columns in English, French, Dutch and German, and what stands below them. */

/** Columns that tell what part a row describes; stock numbers, prices and supply differ where it is the same. */
export const FIELDS_OF_PART = [
  "description",
  "kind",
  "value",
  "value unit",
  "resistance",
  "capacitance",
  "inductance",
  "tolerance",
  "watts",
  "volts",
  "volts ac",
  "technology",
  "safety class",
  "temperature coefficient",
  "body",
] as const;

/** What a column of a vendor's list holds. */
export const COLUMN_FIELDS = [
  "stock number",
  ...FIELDS_OF_PART,
  "taper",
  "length",
  "diameter",
  "pack",
  "price",
  "price unit",
  "currency",
  "stock",
  "minimum",
  "multiple",
  "status",
  "note",
  "nothing",
] as const;
export type ColumnField = (typeof COLUMN_FIELDS)[number];

/**
 * Head (folded: lower case, no accents) -> field; the first row that fits wins, so the narrower words stand first.
 *
 * `nothing` are columns that say nothing about the offer here, and prices with tax beside those without.
 */
export const COLUMN_WORDS: readonly (readonly [field: ColumnField, head: RegExp])[] = [
  [
    "nothing",
    /^(?!.*\b(hors|excl?|exkl|ohne|zonder|ex|excluding|before|netto?)\b).*\b(tva|ttc|tvac|vat|btw|mwst|ust|incl?|inkl|brutto|gross|tax)\b/,
  ],
  [
    "nothing",
    /image|photo|picture|bild|foto|datasheet|datenblatt|\burl\b|\blink\b|tariff|zolltarif|country|origin|herkunft|\bland\b|weight|gewicht|poids|\brohs\b|\bean\b|barcode|lead spacing|pitch|rastermass|raster|\bpas\b|steek|height|hohe|hauteur|hoogte|discount|rabatt|korting|remise|updated|\bdate\b|datum/,
  ],
  [
    "nothing",
    /\b(mfr|mpn|mfg|manufacturer|maker|brand|marque|merk|marke|hersteller|fabrikant|fabricant)\b|herstellernummer|drawer|\bbin\b|shelf|\blade\b|\bfach\b|schublade|tiroir|\bplace\b|location|lagerort|plaats|emplacement/,
  ],
  [
    "price unit",
    /(price|preis|prijs|prix|tarif)[\s-]*(per|pro|pour|par|voor|je|unit|einheit|eenheid|basis)\s*([^\w\s]|$)|prijseenheid|unite de prix|^(per|pro|pe|uom|unit|einheit|eenheid|unite|je)$/,
  ],
  ["body", /device package|package ?\/ ?case|^package( type)?$|case (style|size|code)/],
  [
    "stock",
    /(avail\w*|verfugbare?|beschikbare?) ?(qty|quantity|stock|menge|anzahl|aantal)|(qty|quantity) (avail|on hand|in stock)/,
  ],
  ["minimum", /\bmoq\b|\bmini?\b|min\.|minim|mindest|abnahme|afname/],
  ["multiple", /multipl|vielfach|veelvoud|mehrfach|\bmult\b|\bsteps?\b|staffelmenge/],
  [
    "price",
    /^(ab|from|a partir de|des|vanaf|per)?\s*\d{1,6}\s*(\+|up|pcs?\.?|pieces?|pces?|off|st\.?|stk\.?|stuck|stuks?|x|-\s*\d+|and up|et plus|ou plus|vpe?|ve|packs?|units?)?( \(?(ex|excl?|hors|netto?|exkl|zonder|ohne)\b.*)?$|^(lots?|box(es)?|bags?|sets?|price) (of|for) \d{1,4}$/,
  ],
  [
    "pack",
    /^(?!.*(pric|preis|prijs|\bprix\b|\bcost)).*?(\bpack|\bpkg|verpack|verpakk|condit|\bvpe\b|\bve\b|gebinde|emball|per bag|bag size|sachet|\bpcs\b|pieces per|stuks per|stuck pro|inhoud|inhalt|contents|quantity per|(in|per) (a |the )?(lot|bag|pack)\b|^lot (de|of)$|\bs\.?p\.?q\b|\bm\.?p\.?q\b|stuckzahl je)/,
  ],
  [
    "price",
    /pric|preis|prijs|\bprix\b|\bcost|\btarif|\bnetto\b|\bnet\b|\beach\b|\bea\b|\bstaffel(preis)?\b|\bp\.?u\.?\b|[€$£]|\b(eur|usd|gbp|chf)\b(?!.*(code|iso))/,
  ],
  ["currency", /currenc|devise|wahrung|valuta|munt\b|monnaie/],
  [
    "stock number",
    /(stock|order|part|item|cat(alog(ue)?)?|product|article|artikel|bestell?|best|art|our|vendor|supplier|id|ref)[\s.-]*(no|nr|num(ber|mer|ero)?|code|#|n°|nummer|ref)\b|(stock|order|part|item|cat(alog)?|art|our) ?#|n° ?(art|ref|cde|article)|bestell?nummer|artikelnummer|bestelcode|artikelcode|\bsku\b|^ref(erence|erentie|erenz)?\.?$|^(code|art|cat|no|nr|n°|#|nummer|number|order|best)\b\.?$|^code\b/,
  ],
  [
    "status",
    /status|life ?cycle|lebenszyklus|levenscyclus|cycle de vie|^state$|\betat\b|statut|toestand|zustand|lieferstatus|availab|verfugbar|lieferbar|beschikbaar|leverbaar|levertijd|lieferzeit|delai|delivery/,
  ],
  [
    "stock",
    /stock|bestand|\blager|voorraad|dispo|(on|in) hand|\bqty\b|quantity|quantite|\bqte\b|aantal|anzahl|menge|vorrat|count/,
  ],
  ["safety class", /safety|securite|sicherheit|veiligheid|^(class|klasse|classe)$|\bx\/y\b|approval/],
  [
    "temperature coefficient",
    /temp\w*\.?\s*(coef|char|koef|beiwert)|\bt\.?[ck]\.?\b|\btempco\b|^(char(acteristic)?|keramikklasse|dielectric code)$/,
  ],
  ["tolerance", /\btol/],
  ["value", /(ohms?|Ω|ω|\bres\w*|\br)\s*[/,&+]\s*([munpµμ]?f\b|farad|cap|\bc\b)/],
  ["resistance", /\bresistance\b|\bohms?\b|ohmwert|ohmwaarde|Ω|ω|widerstand(swert)?$|weerstand(swaarde)?$/],
  ["capacitance", /capacit(y|e\b|ance|eit)|kapazit|\b[munp]fd?\b|[µμ]f\b|\bmmf/],
  ["inductance", /induct|induktiv|zelfinduct|\b[mµμu]h\b/],
  [
    "volts ac",
    /\bvac\b|v ?~|volt\w*\W*(\(?ac\b|a\.c\.|alternat|wechsel|wissel)|wechselspannung|wisselspanning|tension alternative/,
  ],
  ["volts", /\bvolt|spannung|\btension|spanning|\bw?vdc\b|\bv\b|^u ?(max|nenn|r|n)?$/],
  ["watts", /\bwatt|power|leistung|belast|puissance|vermogen|dissip|\bw\b|^p ?(max|nenn|tot)?$/],
  ["taper", /\btaper|kurve|\bcurve|courbe|verloop|kennlinie|\blaw\b/],
  ["length", /length|\blange\b|longueur|\blengte\b|^l( \(?mm\)?)?$/],
  ["diameter", /diam|durchmesser|\bdoorsnede|^[ødd]( \(?mm\)?)?$|^ø/],
  [
    "body",
    /\bbody|\bcase\b|mount|lead style|\bleads\b|terminals|bauform|gehause|boitier|behuizing|montage|features|eigenschaft|proprietes|kenmerk|style|\bform\b|ausfuhrung|uitvoering|execution|size|dimension|abmess|afmeting|grosse/,
  ],
  ["technology", /technolog|material|materiaal|matiere|dielectr|dielektr|composition|construct|bauart|\btype|\btyp\b/],
  [
    "kind",
    /categor|kategor|\bkind\b|\bgroup|gruppe|groep|groupe|famil|\bsoort|\bart$|bauteil$|component$|onderdeel$|composant$/,
  ],
  ["value", /\bvalue|\bwert\b|nennwert|valeur|waarde/],
  [
    "description",
    /descr|designation|omschrijv|bezeichn|beschreib|\bwhat\b|\bitem|article|artikel|artikkel|product|produit|produkt|\bname\b|\bnaam\b|libelle|\btext\b|^was$|benaming|\btitle\b|details|\bpart\b/,
  ],
  [
    "note",
    /\bnote|\b(opm|bem|rem|anm|bijzonderheden)\b|remark|bemerk|remarque|opmerk|comment|hinweis|\binfo|anmerk|observ/,
  ],
];
