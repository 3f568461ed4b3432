import { describe, expect, test } from "vitest";
import { readList } from "../../../../src/core/index.js";

const inside = (text: string) => readList([{ number: 1, text, cells: null }]).parts[0]?.inner;

describe("the pieces of a printed network", () => {
  test.each<[string, readonly (string | undefined)[], string]>([
    [
      "PC1 Printed network: 470K pins 1-2, .005 mfd pins 2-3, 100 mmf pins 3 and 4",
      ["1-2", "2-3", "3-4"],
      "pins named",
    ],
    ["PC1 Printed network: 470K (1-2), 470K (2-5), 250 MMF (1-4)", ["1-2", "2-5", "1-4"], "pins in brackets"],
    ["PC1 Printed network: pins 1-2: 470K, pins 2-3: .005 mfd", ["1-2", "2-3"], "pins before the piece"],
    ["PC1 Printed network: terminals A to B 470K, terminals B to C 22K", ["A-B", "B-C"], "letters"],
    ["PC1 Printed network: 470K, .005 mfd pins 2-3", [undefined, "2-3"], "pins of one of them"],
    ["PC1 Printed network: 22K, 8200 & 8200 ohms", [undefined, undefined, undefined], "no pins said, none guessed"],
  ])("%s: %s (%s)", (text, pins, _why) => {
    expect(inside(text)?.map((piece) => piece.pins)).toEqual(pins);
  });

  test("pins are no values", () => {
    expect(inside("PC1 Printed network: 470K pins 1-2, 100 mmf pins 3-4")).toMatchObject([
      { kind: "resistor", value: 470e3 },
      { kind: "capacitor", value: 1e-10 },
    ]);
  });

  test("a decimal beside picofarads is microfarads", () => {
    expect(inside("PC2 Printed RC network: 250K, 500K, .005, 250 mmf")?.map(({ value }) => value)).toEqual([
      250e3, 500e3, 5e-9, 2.5e-10,
    ]);
  });
});
