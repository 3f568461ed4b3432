import type { DoubtfulWord } from "../source.js";
import type { PictureSize } from "./pictureSize.js";
import { placeOf } from "./placeOf.js";
import type { ScannedLine } from "./scannedText.js";

const DOUBT_BELOW = 0.7;
const LONE_UNIT = /^[wvV]$|^W$/;
/** A figure with a letter in it that looks like a digit: TW, lW, O5V, I0%. */
const LOOKALIKE = /^[TIil|!OoQSsZzB\d./]*[TIil|!OoQSsZzB][\d./]*(?:[WVwv%]|[kKM]|mfd?|mmfd?)$/;
const NUMBER = /[\d½¼¾]$/;

/**
 * Words of scanned lines that a person should look at: those the reader was unsure of, and units that lost their number
 * or took a letter for a digit (the usual faults: "1W" read as "w" or "TW").
 */
export function doubtsOf(lines: readonly ScannedLine[], size: PictureSize | null): DoubtfulWord[] {
  return lines.flatMap(({ words }, i) =>
    words
      .filter((word, at) => {
        const lostNumber = LONE_UNIT.test(word.text) && !NUMBER.test(words[at - 1]?.text ?? "");
        return lostNumber || LOOKALIKE.test(word.text) || word.confidence / 100 < DOUBT_BELOW;
      })
      .map(({ text, confidence, bbox }) => ({
        line: i + 1,
        word: text,
        confidence: confidence / 100,
        place: size && placeOf(bbox, i + 1, size),
      })),
  );
}
