/** TABLE: the words that head the columns of parts lists, and what the columns hold. */
import { type Measure, type Unit, unitNamed } from "../../quantity/notation/units.js";
import { tokensOf } from "../words/tokens.js";
import type { Head, Piece, Role } from "./row.js";

/** Words of heads without dots and blanks at the ends; "|" parts them. */
const HEADS: readonly (readonly [Role, string])[] = [
  ["designator", "circuit|circuit desig|circuit designation|ref|refdes|refs|ref des|ref desig|ref designation|ref designator|ref designators|reference|references|reference designation|reference designator|reference symbol|ref symbol|symbol|symbols|sym|symb|circuit symbol|diagram symbol|dia gram symbol|schematic symbol|circuit ref|schematic ref|diagram ref|ckt ref|designation|designator|designators|desig|pos|position|circuit no|schem location|schematic location|schem ref|schematic no|schaltzeichen|diagram no|diag no|diag ref|dia no|symbol no|sym no|ref no|key|key no|component|part ref|circ ref|ident|code no on diagram|repère|rep|bauteil|bauelement|bauteil nr|schaltbild|kennzeichen"],
  ["description", "description|as built|as found|what|descr|desc|name and description|name|title|part name|part|parts|benennung|bezeichnung|gegenstand|article|component description|name of part and description|nomenclature|particulars|details|description of part|part description|beschreibung|désignation"],
  ["value", "value|values|val|vals|valeur|résistance|capacité|wert|resistance|res|ohms|ohm|cap|capacity|capacitance|mfd|mf|mmf|mmfd|uf|pf|µf|inductance|henries|resistance value|nominal value|nominal|orig value|original value|original|nennwert|werte|elektrische werte|elektrische daten|daten|größe|grösse|size|k ohms|kilohms|megohms|megs|meg"],
  ["tolerance", "tol|tolerance|tolérance|tols|toleranz|limits|%|tol %"],
  ["watts", "watts|watt|wattage|power|w|puissance|leistung|belastbarkeit|watts rating"],
  ["volts", "volts|volt|voltage|wv|wvdc|wv dc|vdcw|dcwv|vdc|dcw|v|volts wkg|wkg volts|working volts|working voltage|volts dc|dc volts|tension|tension de service|spannung|nennspannung|wkg v|w v d c|peak volts|volts working|dc working"],
  ["rating", "rating|ratings|type|type rating|rating type|type and rating|belastung|belastung spannung|material|construction|dielectric|class|kind|style|art|bauart|ausführung|typ|comment|specification|spec|characteristics"],
  ["quantity", "qty|how many|quan|quant|quantity|no reqd|reqd|no req|req|required|number|no off|off|stck|stück|anzahl|anz|menge|quantité|qté|nombre|qty req|qty reqd|number required|no used|used|quan used|quant used|quantity used|total|parts per kit|per kit|qty per kit|quantity per kit|no per unit|per set"],
  ["partNumber", "part no|part nos|part number|part numbers|partno|pt no|stock|stock no|stock number|order no|order number|bestell nr|bestellnr|bestellnummer|drawing|drawing no|dwg|dwg no|cat no|catalog no|catalogue no|code|code no|code number|mfr part no|mfr no|makers no|maker and type|mfr|manufacturer|nsn|signal corps stock no|navy type|navy type no|type no|our no|spec no|maker|makers|made by|supplier|source|teile nr|sach nr|lagernummer|lager nr|teilenummer|référence|code article|artikelnummer|artikel nr|sachnummer|piece no|piece number|key part no|replacement part no|service part no|factory no|works no|works number|store no|stores no|stores ref|part"],
  ["use", "function|functions|use|used as|used for|purpose|circuit function|application|applications|service|where used|where|function or location|used in circuit|fonction|emploi|verwendung|zweck"],
  ["section", "location|locations|module no|module|ckt no used on|circuit no used on|unit|assembly|chassis|section|sub assembly|subassembly|used on|used in|baugruppe|ort"],
  ["remarks", "remarks|remark|remarques|notes|note|hinweis|hinweise|bem|bemerkung|bemerkungen|comments|suggestion|anmerkung|observations|see note"],
  ["replacement", "new value|new|changed to|changed|fitted|fitted value|replacement|replacement value|replaced by|replaced with|substitute|modern|modern value|now fitted|ersatz|neu|neuer wert"],
  ["price", "price|list price|list|net|net price|price each|each|preis|cost|unit price|list each"],
  ["item", "item|item no|find|find no|line|line no|index|index no|no|lfd nr|nr|serial no"],
]; // biome-ignore format: a table

const ROLE_OF: ReadonlyMap<string, Role> = new Map(
  [...HEADS].reverse().flatMap(([role, words]) => words.split("|").map((word) => [word, role] as const)),
);

/** No head is longer than this. */
const LONGEST_HEAD = 60;

/** A column for one variant of the set: "-11", "-01", "0". */
const VARIANT = /^(?:-\d{1,3}|0)$/;
/** The same beside the word itself: "Qty reqd -11", "-11 Qty". */
const VARIANT_BESIDE = /^-\d{1,3}\s|\s-?\d{1,3}$/;

const keyOf = (text: string) => plainKey(text.replace(/\bin\b.*$/i, " "));

const plainKey = (text: string) =>
  text
    .toLowerCase()
    .replace(/(?<=[a-z])0(?=[a-z])/g, "o")
    .replace(/±|\+\/?-|\([^()]*\)/g, " ")
    .replace(/[.:/'"*_,]|-(?=\s|$)/g, " ")
    .replace(/-/g, " ")
    .trim()
    .replace(/\s+/g, " ")
    .replace(/^rated (?=\w)/, "");

/** A figure stands in a head only in brackets, behind "in", as a nought for an O, or as a variant at either end. */
const MAY_HOLD_FIGURE = /\(|\bin\b|[a-z]0[a-z]|^\s*-\d|\s-?\d{1,3}\s*$/i;
const isFigures = (text: string) => /\d/.test(text) && !MAY_HOLD_FIGURE.test(text);

/** The role that a head's words give a column, or null. "Cap. in MF" is a value in microfarads. */
export function roleOfHead(text: string): Role | null {
  if (VARIANT.test(text.trim())) return "quantity";
  if (text.length > LONGEST_HEAD || text.includes("=") || isFigures(text)) return null;
  const key = keyOf(text);
  return (
    roleOfKey(plainKey(text)) ??
    roleOfKey(key) ??
    roleOfKey(keyOf(text.trim().replace(VARIANT_BESIDE, ""))) ??
    roleOfPair(text) ??
    roleByUnit(text, key)
  );
}

const UNIT_HEAD = /^(?:units?|unit of measure|u\/?m|einheit|einh\.?)$/i;

/** Whether a head announces the units of the numbers beside it. */
export const isUnitHead = (text: string) => UNIT_HEAD.test(text.trim());

/** Words too general to tell a column by one of them among others ("Serial number", "Part of set"). */
const GENERAL = new Set("number no nr part parts list total name title type net code".split(" "));

/** The role of a head, or the one that some of its words give it. */
export const roleOfLongHead = (text: string): Role | null => roleOfHead(text) ?? roleByWords(text);

/** The role that some words of a longer head give it, those at its end before those at its start: "Total resistance", "Qty -11". */
function roleByWords(text: string): Role | null {
  const words = text.length > LONGEST_HEAD ? [] : keyOf(text.replace(/\bper\b.*$/i, "")).split(" ");
  for (let count = words.length; count > 0; count--)
    for (const phrase of [words.slice(-count).join(" "), words.slice(0, count).join(" ")]) {
      const role = GENERAL.has(phrase) ? undefined : ROLE_OF.get(phrase);
      if (role) return role;
    }
  return null;
}

const roleOfKey = (key: string): Role | null => ROLE_OF.get(key) ?? ROLE_OF.get(key.replace(/ /g, "")) ?? null;

/** "Nomenclature or description", "Value & type": two heads in one; what names a thing stands before what rates it. */
function roleOfPair(text: string): Role | null {
  const parts = text.split(/\s(?:or|and|und|oder)\s|[&/]/i);
  const roles = parts.map((part) => roleOfKey(keyOf(part)));
  if (parts.length !== 2 || roles.some((role) => role === null)) return null;
  return roles.every((role) => role === "volts" || role === "watts") ? "rating" : roles[0]!;
}

const ROLE_OF_MEASURE: Readonly<Partial<Record<Measure, Role>>> = {
  ohm: "value",
  farad: "value",
  henry: "value",
  watt: "watts",
  volt: "volts",
  ratio: "tolerance",
};
const MOST_WORDS_BEFORE_UNIT = 3;

/** "Cap. mfd", "R kΩ", "Watts max": a few words, and a unit that tells what is measured. */
function roleByUnit(text: string, key: string): Role | null {
  const words = key.split(" ");
  const measure = words.length > MOST_WORDS_BEFORE_UNIT || /\d/.test(text) ? null : unitOfHead(text)?.measure;
  return measure ? (ROLE_OF.get(words[0]!) ?? ROLE_OF_MEASURE[measure] ?? null) : null;
}

/** The unit printed in a head: "Cap. in MF", "Value (uF)", "W.V.D.C.", "Tol. ±%". */
export function unitOfHead(text: string): Unit | null {
  if (text.includes("%")) return { measure: "ratio", factor: 0.01 };
  const tokens = tokensOf(text);
  for (const [at, token] of tokens.entries()) {
    const isLetter = /^[VWFΩΩ]$/.test(token.text) && tokens[at - 1]?.text !== "-";
    const isUnit = token.type === "word" && (token.key.length > 1 || isLetter) && token.key !== "in";
    const unit = isUnit ? unitNamed(token.key) : undefined;
    if (unit?.measure && unit.measure !== "ampere") return withPrefix(unit, tokens[at - 1]?.text);
    if (unit && unit.factor === 1e6 && token.key.startsWith("meg")) return { ...unit, measure: "ohm" };
  }
  return null;
}

/** "K ohms", "M ohms": the prefix stands before the unit. */
function withPrefix(unit: Unit, before: string | undefined): Unit {
  const prefix = before === undefined || unit.measure !== "ohm" || unit.factor !== 1 ? undefined : unitNamed(before);
  return prefix?.measure === null && prefix.factor > 1 ? { ...prefix, measure: unit.measure } : unit;
}

/** A bare "Part" names the thing; beside a column that describes it, or as the last behind a value, it holds its number. */
function withPartNumber(heads: readonly Piece[], roles: readonly (Role | null)[]): readonly (Role | null)[] {
  const at = heads.findIndex((head) => keyOf(head.text) === "part");
  const others = roles.filter((_, i) => i !== at);
  const isNumber =
    others.includes("description") || (at === roles.length - 1 && others.some((role) => DESCRIBES.has(role)));
  return at >= 0 && isNumber ? roles.map((role, i) => (i === at ? "partNumber" : role)) : roles;
}

const DESCRIBES: ReadonlySet<Role | null> = new Set<Role>(["description", "value"]);

const FEWEST = 2;
const FEWEST_OF_LONGER = 3;
const STRONG: ReadonlySet<Role | null> = new Set<Role>(["designator", "description", "value", "item"]);

/**
 * The heads that a line's pieces are, or null when the line is no head: at least two known heads, and no more strange
 * pieces than known ones (twice as many, where no figure stands among them); or one, and a known word in each of the others.
 */
export function headsOf(pieces: readonly Piece[]): Head[] | null {
  const filled = pieces.filter((piece) => piece.text.trim() !== "");
  const exact = filled.map((piece) => roleOfHead(piece.text));
  const known = exact.filter((role) => role !== null).length;
  if (known === 0) return null;
  const isWords = filled.every((piece) => !/\d/.test(piece.text));
  const isStrong = exact.some((role) => STRONG.has(role)) || (exact.includes("partNumber") && exact.includes("price"));
  const isHead = known >= FEWEST && known * (isWords ? 3 : 2) >= filled.length && isStrong;
  if (!isHead && !(isWords && filled.length >= FEWEST_OF_LONGER)) return null;
  const longer = filled.map((piece, i) => exact[i] ?? roleByWords(piece.text));
  if (!isHead && !(longer.every((role) => role !== null) && longer.some((role) => STRONG.has(role)))) return null;
  const roles = withPartNumber(filled, longer);
  return filled.map((piece, i) => ({
    role: roles[i] ?? "remarks",
    unit: unitOfHead(piece.text),
    text: piece.text,
    start: piece.start,
    end: piece.start + piece.text.length,
  }));
}
