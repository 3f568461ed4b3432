const SIGNS: readonly (readonly [code: string, pattern: RegExp])[] = [
  ["CAD", /\bCAD\b|\bC(?:A|DN)?\$|canadian/i],
  ["AUD", /\bAUD\b|\bAU?\$|australian/i],
  ["NZD", /\bNZD\b|\bNZ\$/i],
  ["EUR", /€|\bEUR\b|\beuros?\b/i],
  ["GBP", /£|\bGBP\b|sterling/i],
  ["CHF", /\bCHF\b|\bSFr\b|swiss francs?|schweizer franken|francs suisses/i],
  ["SEK", /\bSEK\b/i],
  ["DKK", /\bDKK\b/i],
  ["NOK", /\bNOK\b/i],
  ["PLN", /\bPLN\b|zł/i],
  ["CZK", /\bCZK\b|Kč/i],
  ["JPY", /¥|\bJPY\b/i],
  ["USD", /\$|\bUSD\b|u\.?s\.? dollars?/i],
];

/** The currency that a text names, or null. @see ISO 4217 @example currencyIn("3,20 CHF") // "CHF" */
export function currencyIn(text: string): string | null {
  return SIGNS.find(([, pattern]) => pattern.test(text))?.[0] ?? null;
}

/** The currency that most of these texts name, or null where none names one. */
export function currencyOf(texts: readonly string[]): string | null {
  const counts = new Map<string, number>();
  for (const text of texts) {
    const code = currencyIn(text);
    if (code) counts.set(code, (counts.get(code) ?? 0) + 1);
  }
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0] ?? null;
}
