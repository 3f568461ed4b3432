import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { decodeText } from "../../src/sources/decodeText.js";
import { guessDelimiter } from "../../src/sources/delimiter.js";
import { readSource } from "../../src/sources/readSource.js";
import { readText } from "../../src/sources/text.js";

const utf8 = (text: string) => new TextEncoder().encode(text);

describe("text becomes lines", () => {
  test("a quoted cell over two lines keeps the number of the line it starts on", () => {
    const { lines } = readText('no,what\n1,"pot with\nswitch"\n2,knob\n', "stock.csv");
    expect(lines.map((line) => [line.number, line.cells?.[1]])).toEqual([
      [1, "what"],
      [2, "pot with\nswitch"],
      [4, "knob"],
    ]);
  });

  test("a quote that nobody closed spoils its own line only", () => {
    const { lines } = readText('a,"broken\nb,2\nc,3\n', "stock.csv");
    expect(lines.map((line) => line.cells)).toEqual([
      ["a", '"broken'],
      ["b", "2"],
      ["c", "3"],
    ]);
  });

  test("inch marks in an unquoted cell stay inch marks", () => {
    expect(readText('P1\t1/4" shaft, 3" long\t2\nP2\tknob\t1', "drawer.tsv").lines[0]?.cells).toEqual([
      "P1",
      '1/4" shaft, 3" long',
      "2",
    ]);
  });

  test("a table of semicolons keeps its columns under a name that says text, and prose stays prose", () => {
    const table = "Pos.;Art;Wert;Tol.\nR1;Schicht;4k7;5 %\nR2;Schicht;10k;5 %";
    const prose = "Resistors: R1, R5 470K; R2 2.2 meg; R3\n100K 1 watt; R6 1.5K, 10%, carbon\nand R7 47K.";
    expect(readText(table, "list.txt").lines[1]?.cells).toEqual(["R1", "Schicht", "4k7", "5 %"]);
    expect(readText(prose, "list.txt").lines[0]?.cells).toBeNull();
  });

  test.each<[text: string, delimiter: string | null, why: string]>([
    ["a;1,5;2,5\nb;2,75;1,0", ";", "commas are decimal commas there"],
    ['a,"1;2",3\nb,"2;3;4",4', ",", "semicolons inside quotes do not count"],
    ["A price list of 1951\n\na\tb\nc\td\ne\tf", "\t", "a line of text above changes nothing"],
    ["sep=|\na|b,c", "|", "the file says so itself"],
    ["one\ntwo\nthree", null, "there are no columns"],
  ])("%j is cut at %j: %s", (text, delimiter) => expect(guessDelimiter(text)).toBe(delimiter));

  test("commas in a typed list make no columns", () => {
    expect(readText("R1, R2, 470K\nR3, R4, 1M", "list.txt").lines[0]?.cells).toBeNull();
  });

  test.each([
    [Uint8Array.of(0xef, 0xbb, 0xbf, 0x41), "A", "UTF-8 with its mark"],
    [Uint8Array.of(0xff, 0xfe, 0xb5, 0x00), "µ", "UTF-16 as spreadsheets save Unicode text"],
    [Uint8Array.of(0x31, 0xb5, 0x46), "1µF", "Windows-1252"],
    [utf8("½ Ω"), "½ Ω", "plain UTF-8"],
  ])("%j reads %j: %s", (bytes, text) => expect(decodeText(bytes)).toBe(text));
});

describe("files that are no lists say so", () => {
  test.each([
    ["empty.csv", new Uint8Array(0), "empty"],
    ["blank.txt", utf8("\n \n\t\n"), "blank lines"],
    ["noise.csv", Uint8Array.from({ length: 5000 }, (_, i) => (i * 7919) % 256), "not text"],
  ])("%s", async (name, bytes, says) => {
    await expect(readSource(name, bytes)).rejects.toThrow(says);
  });

  test("a reading that was cancelled does not start", async () => {
    const signal = AbortSignal.abort();
    await expect(readSource("a.csv", utf8("a,b"), { signal })).rejects.toThrow(/abort/i);
  });
});

describe("laws", () => {
  const cell = fc.string({ maxLength: 12 }).map((text) => text.replace(/[\r\n]/g, " "));
  const anyText = fc.array(fc.constantFrom("a", '"', ",", ";", "\t", "\n", " ", "1"), { maxLength: 80 });

  test("each line of a text is in exactly one record", () => {
    fc.assert(
      fc.property(anyText, (signs) => {
        const text = signs.join("");
        const { lines } = readText(text, "x.csv");
        expect(lines.map((line) => line.text).join("\n")).toBe(text.replace(/\n$/, ""));
      }),
    );
  });

  test("a table written with quotes reads back as it was", () => {
    const table = fc.array(fc.array(cell, { minLength: 3, maxLength: 3 }), { minLength: 2, maxLength: 8 });
    fc.assert(
      fc.property(table, (rows) => {
        const quoted = rows.map((row) => row.map((c) => `"${c.replaceAll('"', '""')}"`).join(",")).join("\n");
        expect(readText(quoted, "x.csv").lines.map((line) => line.cells)).toEqual(rows);
      }),
    );
  });
});

test("a table drawn with strokes and lined up by tabs is no table of tabs", () => {
  const { lines } = readText("|Ref\t|Value\t\t|\n|R1\t|1 M\t\t|\n|R2\t|47 k\t\t|", "pasted");
  expect(lines.every((line) => line.cells === null)).toBe(true);
});
