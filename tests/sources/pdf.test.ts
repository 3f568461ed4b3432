import { describe, expect, test } from "vitest";
import { pageLines } from "../../src/sources/pdf/pageLines.js";
import { readSource } from "../../src/sources/readSource.js";
import { pdfBytes } from "./pdfBytes.js";

describe("a PDF's text layer becomes lines", () => {
  test("lines come from the top down, page after page, with numbers that run on", async () => {
    const first = [
      { x: 50, y: 700, text: "RESISTORS" },
      { x: 50, y: 680, text: "R1 470K 1/2W" },
    ];
    const { form, lines, pages, places } = await readSource(
      "list.pdf",
      pdfBytes([first, [{ x: 50, y: 700, text: "C1 .05 mfd" }]]),
    );
    expect(form).toBe("pdf");
    expect(lines.map((line) => [line.number, line.text])).toEqual([
      [1, "RESISTORS"],
      [2, "R1 470K 1/2W"],
      [3, "C1 .05 mfd"],
    ]);
    expect(pages.map((page) => page.firstLine)).toEqual([1, 3]);
    // Letter paper is 612 by 792 points: a baseline at 700 stands 92 points from the top, and 10 point letters hang 2.5 below it.
    expect(places[0]?.bottom).toBeCloseTo(94.5 / 792, 3);
    expect(places[0]?.top).toBeCloseTo(82 / 792, 3);
    expect(places[0]?.left).toBeCloseTo(50 / 612, 3);
  });

  test("columns stand where they stood on the page", async () => {
    const page = ["R1", "R22", "R333"].flatMap((name, i) => [
      { x: 50, y: 700 - 15 * i, text: name },
      { x: 200, y: 700 - 15 * i, text: "470K" },
      { x: 350, y: 700 - 15 * i, text: "plate load" },
    ]);
    const { lines } = await readSource("table.pdf", pdfBytes([page]));
    const starts = lines.map((line) => [line.text.indexOf("470K"), line.text.indexOf("plate")]);
    expect(new Set(starts.map(String)).size).toBe(1);
    expect(starts[0]![0]).toBeGreaterThan(10);
  });

  test("a line whose pieces are a hair apart in height stays one line", () => {
    const piece = (text: string, x: number, y: number) => ({ text, x, y, width: text.length * 6, height: 10 });
    expect(pageLines([piece("470", 60, 100.6), piece("R1", 30, 100), piece("K", 78.5, 100)])[0]?.text).toBe(
      "R1   470K",
    );
  });
});

describe("PDFs that cannot be read say so", () => {
  test.each([
    ["without text", pdfBytes([[]]), /pictures without text/],
    ["cut short", pdfBytes([[{ x: 50, y: 700, text: "R1" }]]).subarray(0, 60), /damaged|without text/],
  ])("one %s", async (_, bytes, says) => {
    await expect(readSource("list.pdf", bytes)).rejects.toThrow(says);
  });
});
