import type { Line } from "tesseract.js";

/** What a scanned line needs to be set out again: its words and where they stand. */
export type ScannedLine = Pick<Line, "words" | "bbox">;

const GAP_OF_COLUMN = 1.8;

/**
 * A scanned line as text; a gap much wider than a character becomes as many blanks, so that columns stay columns.
 */
export function scannedText({ words }: ScannedLine): string {
  const letters = words.reduce((sum, word) => sum + word.text.length, 0);
  const inked = words.reduce((sum, word) => sum + word.bbox.x1 - word.bbox.x0, 0);
  const pitch = letters > 0 ? inked / letters : 1;
  let text = "";
  let end = words[0]?.bbox.x0 ?? 0;
  for (const { text: word, bbox } of words) {
    const gap = (bbox.x0 - end) / pitch;
    text += text === "" ? word : " ".repeat(gap > GAP_OF_COLUMN ? Math.max(2, Math.round(gap)) : 1) + word;
    end = bbox.x1;
  }
  return text;
}
