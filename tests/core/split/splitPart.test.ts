import { describe, expect, test } from "vitest";
import { splitPart } from "../../../src/core/split/splitPart.js";
import { partOf } from "../read/readText.js";

describe("one item of a list as the parts it stands for", () => {
  test("R12, R13 is two resistors of one piece each", () => {
    const split = splitPart(partOf("R12, R13   180K", "R12"));
    expect(split.map((part) => [part.designators, part.quantity, part.value])).toEqual([
      [["R12"], 1, 180_000],
      [["R13"], 1, 180_000],
    ]);
  });

  test("an 8+8 can becomes two capacitors that name the can", () => {
    const split = splitPart(partOf("C8A,B   8-8 mfd, 450 V elect.", "C8"));
    expect(split.map((part) => [part.designators[0], part.value, part.volts, part.parent, part.suffix])).toEqual([
      ["C8A", 8e-6, 450, "C8", "A"],
      ["C8B", 8e-6, 450, "C8", "B"],
    ]);
  });

  test("sections without letters are numbered, marks keep their names", () => {
    expect(splitPart(partOf("C1   10-20 mfd, 450 V elect.", "C1")).map((part) => part.designators[0])).toEqual([
      "C1-1",
      "C1-2",
    ]);
    const marked = splitPart(partOf("C1   ◗ 30 MFD., ■ 10 MFD., all 350 W.V. elect.", "C1"));
    expect(marked.map((part) => part.designators[0])).toEqual(["C1-half-moon", "C1-square"]);
  });

  test("pieces over the designators stay with the last one, so none is lost", () => {
    const split = splitPart(partOf("R24, R25   33 ohms, 3 used", "R24"));
    expect(split.map((part) => part.quantity)).toEqual([1, 2]);
  });

  test("an item without designator stays one part with its quantity", () => {
    const [knob] = splitPart({ ...partOf("R1   1K", "R1"), designators: [], quantity: 4 });
    expect(knob).toMatchObject({ designators: [], quantity: 4, parent: null });
  });

  test("a printed network becomes its pieces, numbered in order, each with its pins", () => {
    const split = splitPart(partOf("PC2   Printed network: 250K pins 1-2, .005 mfd pins 2-4", "PC2"));
    expect(split).toMatchObject([
      { designators: ["PC2-1"], kind: "resistor", value: 250e3, parent: "PC2", suffix: "1", pins: "1-2" },
      { designators: ["PC2-2"], kind: "capacitor", value: 5e-9, parent: "PC2", suffix: "2", pins: "2-4" },
    ]);
    expect(split[0]?.whole?.designators).toEqual(["PC2"]);
  });

  test("a tapped resistor becomes its sections; the watts printed for all of it are no section's", () => {
    const split = splitPart({ ...partOf("R50   metal clad 5000-1500-250 ohms", "R50"), watts: 20 });
    expect(split.map(({ designators, value, watts }) => [designators[0], value, watts])).toEqual([
      ["R50-1", 5000, null],
      ["R50-2", 1500, null],
      ["R50-3", 250, null],
    ]);
  });

  test("the resistor a coil is wound on stays with the coil", () => {
    expect(splitPart(partOf("L4   250 uH choke, wound on 22K resistor", "L4")).length).toBe(1);
  });
});
