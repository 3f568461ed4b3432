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
});
