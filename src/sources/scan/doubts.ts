import type { DoubtfulWord } from "../source.js";
import type { ScannedLine } from "./scannedText.js";

const DOUBT_BELOW = 0.7;
const LONE_UNIT = /^[wvV]$|^W$/;
const NUMBER = /[\d½¼¾]$/;

/**
 * Words of scanned lines that a person should look at: those the reader was unsure of, and units that lost their number
 * (the usual fault: "1W" read as "w").
 */
export function doubtsOf(lines: readonly ScannedLine[]): DoubtfulWord[] {
  return lines.flatMap(({ words }, i) =>
    words
      .filter((word, at) => {
        const lostNumber = LONE_UNIT.test(word.text) && !NUMBER.test(words[at - 1]?.text ?? "");
        return lostNumber || word.confidence / 100 < DOUBT_BELOW;
      })
      .map((word) => ({ line: i + 1, word: word.text, confidence: word.confidence / 100 })),
  );
}
