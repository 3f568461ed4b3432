import type { SourceLine } from "../sourceLine.js";
import { designatorsOf } from "./designators.js";

const MIXED = /\d[OolIS]|[OolIS]\d|\b[lO][.,][\dOolI]|\b[lIO]{2,}[.,][\dOolI]|[a-z]0[a-z]/;
const FEWEST = 4;
const SHARE = 0.1;

/** Whether a document came through a poor reading of its letters: figures and letters are mixed on many lines. */
export function isNoisy(lines: readonly SourceLine[]): boolean {
  const filled = lines.filter((line) => line.text.trim() !== "");
  const mixed = filled.filter((line) => MIXED.test(line.text)).length;
  return mixed >= FEWEST && mixed >= filled.length * SHARE;
}

const DIGIT_FOR: Readonly<Record<string, string>> = {
  O: "0",
  o: "0",
  Q: "0",
  l: "1",
  I: "1",
  i: "1",
  "|": "1",
  S: "5",
  s: "5",
  B: "8",
  Z: "2",
  G: "6",
};
const PREFIX = /^(SW|PL|SP|CR|DS|RT|VR|TH|SR|LS|FS|[CRLTVSFIJKMPQXYZED])(-?)([0-9OoQlIi|SsBZG]{1,3})([ACDEF]?)$/;

/** The names in a designator cell of a noisy document, letters in the place of figures put right: "ClO" is C10. */
export function noisyDesignators(text: string): readonly string[] | null {
  const repaired = text
    .split(/(\s*,\s*|\s+)/)
    .map((word) => {
      const match = /^[A-Z]{1,3}-?\d+[A-F]?$/.test(word) ? null : PREFIX.exec(word);
      return match
        ? match[1]! + match[2]! + [...match[3]!].map((letter) => DIGIT_FOR[letter] ?? letter).join("") + match[4]!
        : word;
    })
    .join("");
  return designatorsOf(repaired) ?? (/^[A-Z]{1,2}\?$/.test(text) ? [text] : null);
}
