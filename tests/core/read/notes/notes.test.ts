import { describe, expect, test } from "vitest";
import { codesOf, partOf, readText } from "../readText.js";

describe("what a document says once", () => {
  const noted = (note: string, line: string, name: string) => partOf(`${note}\n\nSymbol   Description\n${line}`, name);

  test.each([
    // note, line, name, what is filled, why
    [
      "All resistors 1/2 watt, 10%, composition unless otherwise specified.",
      "R1       470K",
      "R1",
      { watts: 0.5, construction: "composition" },
      "a general note",
    ],
    [
      "Resistors 1/2 watt, 10%, composition unless specified.",
      "R1       5 ohms, 7W, wirewound",
      "R1",
      { watts: 7, construction: "wirewound" },
      "the line outranks it",
    ],
    [
      "All fixed resistors 1/2 watt unless noted.",
      "R1       Volume control, 1/2 meg.",
      "R1",
      { watts: null, kind: "potentiometer" },
      "it does not reach controls",
    ],
    [
      "Composition resistors are 1/2 watt where nothing else is given.",
      "R1       Wirewound, 3300 ohms",
      "R1",
      { watts: null },
      "a note on one make",
    ],
    [
      "Condensers in mfd unless marked mmf.",
      "C1       .05, 200 V., paper",
      "C1",
      { value: 5e-8, warnings: [] },
      "a unit for bare numbers",
    ],
    [
      "Capacity: decimals are mfd, whole numbers mmfd.",
      "C1       270, mica",
      "C1",
      { value: 2.7e-10 },
      "two units by the way of printing",
    ],
    [
      "Resistors are half watt, carbon, 20 per cent, where nothing else is said.",
      "R1       47K",
      "R1",
      { watts: 0.5, tolerance: { minus: 0.2, plus: 0.2 } },
      "in words",
    ],
    [
      "All 1 % 0.25 W.",
      "R1       470",
      "R1",
      { watts: 0.25, tolerance: { minus: 0.01, plus: 0.01 } },
      "watts are said of resistors",
    ],
    ["All 400 V unless marked.", "C1       .05 mfd", "C1", { volts: 400 }, "volts are said of capacitors"],
    ["All orders 10 % deposit.", "R1       470", "R1", { tolerance: null }, "other words make it no rule for parts"],
    [
      "Capacitors are in mfd if decimal or electrolytic; otherwise mmfd.",
      "C1       100, mica",
      "C1",
      { value: 100e-12, warnings: [] },
      "a condition behind the unit",
    ],
    [
      "Capacitors in nF, electrolytics in mfd.",
      "C1       47, electrolytic",
      "C1",
      { value: 47e-6, warnings: [] },
      "a unit said of some outranks one said of all",
    ],
    [
      "Kap.-Werte ohne Einheit in pF",
      "C1       5000, Papier",
      "C1",
      { value: 5e-9, warnings: [] },
      "a note, no heading",
    ],
    [
      "Values in mmf unless marked.",
      "C1       270",
      "C1",
      { value: 270e-12, warnings: [] },
      "a unit tells of what it speaks",
    ],
    ["A 5% resistor has a gold fourth band.", "R1       47K", "R1", { tolerance: null }, "an explanation is no rule"],
  ] as const)("%s / %s", (note, line, name, filled, _why) => {
    expect(noted(note, line, name)).toMatchObject(filled);
  });

  test("what a note gives says so", () => {
    expect(noted("All resistors 1/2 watt unless noted.", "R1       470K", "R1").from.watts).toEqual({
      by: "note",
      at: "line 1",
    });
  });

  test("a heading gives what it states to the parts below", () => {
    const text =
      "Symbol   Description\n\nMICA CONDENSERS, 500 VOLTS\nC1       270 mmf\n\nPRECISION RESISTORS -- 1%, deposited carbon\nR1       900 ohms";
    expect(partOf(text, "C1")).toMatchObject({ dielectric: "mica", volts: 500 });
    expect(partOf(text, "R1")).toMatchObject({ construction: "carbon-film", tolerance: { minus: 0.01, plus: 0.01 } });
  });
});

test("a note below a heading of a kind speaks of that kind", () => {
  const text =
    "Symbol   Description\n\nCAPACITORS\n(All 10% unless marked.)\nC1       .1 mfd\n\nRESISTORS\nR1       47K";
  expect(partOf(text, "C1").tolerance).toEqual({ minus: 0.1, plus: 0.1 });
  expect(partOf(text, "R1").tolerance).toBeNull();
});

describe("what capital M means", () => {
  const list = (...values: string[]) => values.map((value, i) => `R${i + 1}     ${value}`).join("\n");

  test.each([
    [["500M", "2 MEG", "50M"], "thousand", 500_000, "meg is printed for millions and no K for thousands"],
    [["2.2M", "470K", "10K"], "million", 2.2e6, "K is printed for thousands"],
    [["100M", "250M"], "thousand", 100_000, "no resistor has a hundred megohms"],
    [["1M", "2M"], null, null, "nothing settles it"],
  ] as const)("%j: %s, R1 is %d: %s", (values, meaning, first, _why) => {
    const reading = readText(list(...values));
    expect(reading.dialect.capitalM).toBe(meaning);
    expect(reading.parts[0]!.value).toBe(first);
  });

  test("where it is not settled the list asks, and the answer reads it again", () => {
    const text = list("1M", "2M");
    expect(readText(text).questions).toHaveLength(1);
    expect(codesOf(partOf(text, "R1"))).toEqual(["ambiguous-m"]);
    expect(partOf(text, "R1", { capitalM: "thousand" })).toMatchObject({ value: 1000, warnings: [] });
  });

  test("a note settles it", () => {
    const text = `NOTE 1.  M = 1000 OHMS.\n\n${list("2M", "1.5M")}`;
    expect(readText(text).parts.map((part) => part.value)).toEqual([2000, 1500]);
  });

  test("on a capacitor it is microfarad, and said so", () => {
    expect(partOf("C1     .02M, 600 volt, paper", "C1")).toMatchObject({
      value: 2e-8,
      warnings: [{ code: "unit-assumed" }],
    });
  });
});
