const NAMED: Readonly<Record<string, string>> = {
  amp: "&",
  lt: "<",
  gt: ">",
  quot: '"',
  apos: "'",
  nbsp: " ",
  plusmn: "±",
  micro: "µ",
  mu: "µ",
  omega: "Ω",
  ohm: "Ω",
  deg: "°",
  cent: "¢",
  euro: "€",
  pound: "£",
  yen: "¥",
  times: "×",
  frac12: "½",
  frac14: "¼",
  frac34: "¾",
  ndash: "–",
  mdash: "—",
  minus: "-",
  eacute: "é",
  egrave: "è",
  agrave: "à",
  auml: "ä",
  ouml: "ö",
  uuml: "ü",
  szlig: "ß",
};

/**
 * A cell as a person reads it: HTML entities decoded, odd blanks made plain, ends trimmed.
 *
 * @see WHATWG HTML, named character references
 * @example cleanCell("&frac12; W, 60&cent;") // "½ W, 60¢"
 */
export function cleanCell(cell: string): string {
  if (!/[^!-~]|&/.test(cell)) return cell;
  const decoded = cell.includes("&") ? cell.replace(/&(?:#x([0-9a-f]{1,6})|#(\d{1,7})|(\w{2,8}));/gi, entity) : cell;
  return decoded.replace(/[\s\u00a0\u2007\u2009\u202f]+/g, " ").trim();
}

function entity(whole: string, hex?: string, decimal?: string, name?: string): string {
  if (name) return NAMED[name] ?? NAMED[name.toLowerCase()] ?? whole;
  const code = hex ? Number.parseInt(hex, 16) : Number(decimal);
  return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : whole;
}

/** Text for comparing with tables of words: lower case, accents off, letter for letter. @example fold("Épuisé") // "epuise" */
export function fold(text: string): string {
  if (!/[^ -~]/.test(text)) return text.toLowerCase();
  return text
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .replace(/ß/g, "s");
}

/** Whether a cell says nothing: empty, or a dash or dots standing for that. */
export function saysNothing(cell: string): boolean {
  return /^[-–—.\s]*$/.test(cell) || /^(n\/?a|nil|none)$/i.test(cell);
}
