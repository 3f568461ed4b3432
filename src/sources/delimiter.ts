import { recordsOf } from "./records.js";

export type Delimiter = "\t" | ";" | "," | "|";
const CANDIDATES: readonly Delimiter[] = ["\t", ";", ",", "|"];
const SAMPLE_LINES = 200;
const LEAST_AGREEING = 0.5;

/**
 * What stands between the cells of a table in text, or null where nothing does.
 *
 * The candidate under which most lines have the same number of cells wins; of two equals the one with more cells. A
 * first line `sep=;`, as spreadsheets write it, settles it.
 *
 * @example guessDelimiter("a;1,5\nb;2,5") // ";"
 */
export function guessDelimiter(text: string, candidates: readonly Delimiter[] = CANDIDATES): Delimiter | null {
  const said = /^sep=([\t;,|])\s*(?:\n|$)/i.exec(text)?.[1];
  if (said) return said as Delimiter;
  const lines = text.split("\n", SAMPLE_LINES).filter((line) => line.trim() !== "");
  const scores = candidates.map((delimiter) => ({ delimiter, ...agreement(lines, delimiter) }));
  const best = scores.filter((s) => s.cells >= 2 && s.share >= LEAST_AGREEING).sort((a, b) => weight(b) - weight(a));
  return best[0]?.delimiter ?? null;
}

/** A line of a table drawn with strokes; its tabs only line them up. */
const FRAMED = /^\s*\|.*\|\s*$/;

const SURE_AGREEING = 0.8;
const SURE_CELLS = 4;

/**
 * What parts the cells of a text that does not say it is a table: tabs, or semicolons and commas where nearly all lines
 * have the same four or more cells, as prose never has.
 */
export function sureDelimiter(text: string): Delimiter | null {
  const lines = text.split("\n", SAMPLE_LINES).filter((line) => line.trim() !== "");
  const isDrawn = lines.filter((line) => FRAMED.test(line)).length >= lines.length * LEAST_AGREEING;
  const tab = isDrawn ? null : guessDelimiter(text, ["\t"]);
  if (tab) return tab;
  const isSure = (delimiter: Delimiter) => {
    const { cells, share } = agreement(lines, delimiter);
    return cells >= SURE_CELLS && share >= SURE_AGREEING && lines.length > 2;
  };
  return ([";", ","] as const).find(isSure) ?? null;
}

const weight = (score: { share: number; cells: number }) =>
  Math.round(score.share * 20) * 100 + Math.min(score.cells, 99);

/** The number of cells that most records have under this delimiter, and their share of all. */
function agreement(lines: readonly string[], delimiter: Delimiter): { cells: number; share: number } {
  const counts = new Map<number, number>();
  let records = 0;
  for (const { cells } of recordsOf(lines, delimiter)) {
    records++;
    counts.set(cells.length, (counts.get(cells.length) ?? 0) + 1);
  }
  const [cells, times] = [...counts].sort((a, b) => b[1] - a[1] || b[0] - a[0])[0] ?? [0, 0];
  return { cells, share: records ? times / records : 0 };
}
