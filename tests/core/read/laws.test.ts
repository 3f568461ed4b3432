import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readValue } from "../../../src/core/quantity/readValue.js";
import { writeValue } from "../../../src/core/quantity/writeValue.js";
import { readText } from "./readText.js";

/** Where every filled line of a text ended. */
function accounted(text: string): Set<number> {
  const { parts, furniture, unread } = readText(text);
  return new Set([...parts.flatMap((part) => part.lines), ...furniture, ...unread.map(({ line }) => line)]);
}

const filledLines = (text: string) => text.split("\n").flatMap((line, i) => (line.trim() === "" ? [] : [i + 1]));

/** Pieces that lists are made of, in any order: what no grammar foresees. */
const piece = fc.constantFrom(
  "R1", "C2", "C-3A,B", "R4 THRU R9", "470K", ".05 mfd", "1/2 w", "±10%", "same as R1", "part of T2", "  ", "....", "|", "do.", '"',
  "RESISTORS", "MAIN CHASSIS", "Symbol", "Description", "Part No.", "1006750-39", "12AX7", "(", ")", "450-450-25 volts", "A", "B", ";", ",", "not used",
); // biome-ignore format: a table
const wildText = fc
  .array(
    fc.array(piece, { maxLength: 9 }).map((words) => words.join(" ")),
    { maxLength: 14 },
  )
  .map((lines) => lines.join("\n"));

describe("laws of reading", () => {
  test("every filled line ends in a part, in furniture or unread", () => {
    fc.assert(
      fc.property(wildText, (text) => {
        const seen = accounted(text);
        expect(filledLines(text).filter((line) => !seen.has(line))).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });

  test("any characters at all are read without an error, and no line is lost", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 300 }), (text) => {
        const seen = accounted(text);
        expect(filledLines(text).filter((line) => !seen.has(line))).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });

  test("two lists one below the other read as both do", () => {
    const line = fc.tuple(
      fc.integer({ min: 1, max: 99 }),
      fc.constantFrom("470K 1/2 W", "22,000 ohms", "4.7 meg 10%", "100 ohms 5 W wire wound"),
    );
    const list = (letter: string) =>
      fc
        .array(line, { minLength: 1, maxLength: 12 })
        .map((lines) => lines.map(([n, text]) => `${letter}${n}     ${text}`).join("\n"));
    const plain = (text: string) =>
      readText(text).parts.map(({ designators, value, watts, tolerance }) => ({
        designators,
        value,
        watts,
        tolerance,
      }));
    fc.assert(
      fc.property(list("R"), list("R"), (first, second) => {
        expect(plain(`${first}\n\n${second}`)).toEqual([...plain(first), ...plain(second)]);
      }),
    );
  });

  test("a value written by us reads back the same", () => {
    const kinds = fc.constantFrom("resistor", "capacitor", "inductor") as fc.Arbitrary<
      "resistor" | "capacitor" | "inductor"
    >;
    const scale = { resistor: 1, capacitor: 1e-12, inductor: 1e-6 };
    fc.assert(
      fc.property(kinds, fc.integer({ min: 100, max: 999 }), fc.integer({ min: -2, max: 5 }), (kind, digits, zeros) => {
        const value = Number((digits * Number(`1e${zeros}`) * scale[kind]).toPrecision(3));
        expect(readValue(writeValue(value, kind), { kind }).value / value).toBeCloseTo(1, 9);
      }),
    );
  });

  test.each([
    ["figures and hyphens", "1-".repeat(50_000)],
    ["commas and figures", "1,000".repeat(20_000)],
    ["blanks", `R1${" ".repeat(100_000)}1K`],
    ["leaders", `R1 ${".".repeat(100_000)} 12-34`],
    ["dots and blanks", `R1 ${". ".repeat(50_000)} 12-34`],
    ["designators", "R1,".repeat(30_000)],
    ["letters that look like figures", "OlI".repeat(33_000)],
    ["brackets", "(".repeat(100_000)],
    ["ditto marks", '" '.repeat(50_000)],
    ["words", "same as part of ".repeat(6_000)],
    ["strokes", "|".repeat(100_000)],
    ["decimals and letters", "0O.".repeat(30_000)],
  ])("a line of 100 kB of %s is read to its end", (_what, text) => {
    expect(accounted(text).size).toBe(1);
  });
});
