import { readValue } from "../../src/core/quantity/readValue.js";
import { readList } from "../../src/core/read/readList.js";
import type { SourceLine } from "../../src/core/read/sourceLine.js";
import { readWords } from "../../src/core/read/words/readWords.js";
import { descriptions, linesOfList, linesOfPairs } from "./linesOfList.js";
import type { Bench } from "./measure.js";

const VALUES = ["470K", ".05 mfd", "4K7", "250 mmf", "2.2 meg"];
const of = <T>(list: readonly T[], count: number) => Array.from({ length: count }, (_, i) => list[i % list.length]!);
const document = (lines: readonly string[]): SourceLine[] =>
  lines.map((text, i) => ({ number: i + 1, text, cells: null }));

/** Reading of values, of the words of single lines, and of a whole document of 10,000 parts, one or two to a line. */
export const bench: Bench = {
  title: "reading parts lists",
  rows: () => {
    const [values, lines] = [of(VALUES, 20_000), descriptions(5_000)];
    const [list, pairs] = [document(linesOfList(10_000)), document(linesOfPairs(5_000))];
    return [
      { what: "values in a cell", count: values.length, run: () => values.map((text) => readValue(text).value) },
      {
        what: "a line only split at its blanks",
        count: lines.length,
        run: () => lines.map((text) => text.split(" ").length),
      },
      {
        what: "words of a line",
        count: lines.length,
        run: () => lines.map((text) => readWords(text).amounts.length),
        comparedWith: "a line only split at its blanks",
      },
      { what: "a document of 10,000 lines", count: list.length, run: () => readList(list).parts.length },
      {
        what: "as many parts, two to a line",
        count: list.length,
        run: () => readList(pairs).parts.length,
        comparedWith: "a document of 10,000 lines",
      },
    ];
  },
};
