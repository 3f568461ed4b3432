/** A text with figures put in the place of look-alike letters, character for character, and where that was done. */
export type Repaired = { readonly text: string; readonly spans: readonly (readonly [from: number, to: number])[] };

type Repair = { readonly pattern: RegExp; readonly into: (match: string) => string; readonly onlyNoisy: boolean };

const FIGURES: Readonly<Record<string, string>> = { O: "0", o: "0", l: "1", I: "1", S: "5" };
const toFigures = (text: string) => [...text].map((letter) => FIGURES[letter] ?? letter).join("");

/** What is put right, in order; some in any document, the rest where figures and letters are mixed throughout. */
const REPAIRS: readonly Repair[] = [
  { pattern: /(?<![A-Za-z0-9])[lI](?=\/\d)/g, into: toFigures, onlyNoisy: false },
  { pattern: /(?<=[a-z])0(?=[a-z])/g, into: () => "o", onlyNoisy: true },
  { pattern: /(?<=[a-z])1(?=[a-z])/g, into: () => "l", onlyNoisy: true },
  { pattern: /(?<![A-Za-z0-9])(?=[.,OolI]*\d)(?=[.,\d]*[OolI])[\dOolI][\dOolI.,]*(?=[kKMmpnuµvVwW]?(?![A-Za-z]))|(?<=\.)(?=[OolI]*\d)(?=\d*[OolI])[\dOolI]+(?![A-Za-z])/g, into: toFigures, onlyNoisy: false },
  { pattern: /(?<![A-Za-z0-9])[\dOolIS]*[\dOlIS][\dOolIS]+(?:[.,-][\dOolIS]+)*(?![A-Za-z0-9])/g, into: toFigures, onlyNoisy: true },
  { pattern: /(?<![A-Za-z0-9])[OolIS][.,-][\dOolIS]+(?![A-Za-z0-9])|(?<=\d[.,-])[OolIS](?![A-Za-z0-9])/g, into: toFigures, onlyNoisy: true },
  { pattern: /(?<![A-Za-z0-9])[OlIS](?= (?:[\dOolIS]{3}\b|m?mf|mmf|meg|w\b|watt|ohm|hy|v\b))/g, into: toFigures, onlyNoisy: true },
  { pattern: /(?<![\d.,])0 (?=\d{2,3} ?m?mf)/g, into: () => "0.", onlyNoisy: true },
  { pattern: /(?<=(?<![\d.,])[1-9]\d{0,2}) (?=\d{3} ohm)/g, into: () => ",", onlyNoisy: true },
  { pattern: /(?<![\d\-.,])0-(?=\d)|(?<=(?<![\d\-.,])\d)-(?=\d(?![\d-]))/g, into: (match) => match.replace("-", "."), onlyNoisy: true },
  { pattern: /(?<=(?<![\d.,])[1-9]\d{0,2})\.(?=\d{3} ?ohm)/g, into: () => ",", onlyNoisy: true },
  { pattern: /(?<=\d ?)rn(?=m?fd)/g, into: () => " m", onlyNoisy: true },
  { pattern: /(?<=\d ?)vv\b/g, into: () => "w ", onlyNoisy: true },
  { pattern: /\bV4/g, into: () => "¼ ", onlyNoisy: true },
  { pattern: /\bV2(?= ?w)/g, into: () => "½ ", onlyNoisy: true },
  { pattern: /\bV\*/g, into: () => "½ ", onlyNoisy: true },
  { pattern: /(?<=\d {0,3})\( ?\(F/g, into: (match) => "uuF".padEnd(match.length), onlyNoisy: true },
  { pattern: /(?<=\d {0,3})[(/i]F\b/g, into: () => "uF", onlyNoisy: true },
]; // biome-ignore format: a table

/** In a clean document a letter is doubted only beside a figure, a point or a stroke. */
const SUSPECT = /[OolI][\d.,/]|[\d.,][OolI]/;

/**
 * Letters that stand for figures put right, each to its single plausible reading: .0O5 is .005, l00K is 100K; in a noisy
 * document also lO,OOO for 10,000 and O-O5 for 0.05 (a raised point read as a hyphen).
 */
export function repairFigures(text: string, noisy: boolean): Repaired {
  if (!noisy && !SUSPECT.test(text)) return { text, spans: [] };
  const spans: [number, number][] = [];
  let repaired = text;
  for (const { pattern, into, onlyNoisy } of REPAIRS) {
    if (onlyNoisy && !noisy) continue;
    repaired = repaired.replace(pattern, (match: string, ...rest: unknown[]) => {
      const result = into(match);
      if (result !== match) spans.push([rest.find((part) => typeof part === "number") as number, 0]);
      if (result !== match) spans.at(-1)![1] = spans.at(-1)![0] + match.length;
      return result;
    });
  }
  return { text: repaired, spans };
}
