import { expect, test } from "vitest";
import { partOf } from "../readText.js";

test.each<[string, string, object, string]>([
  // heads, row, what is read, why (common practice)
  ["Sym|Name|Volts", "PL1|Lamp|6-8", { volts: null }, "a span is no one rating"],
  ["Sym|Name|Volts", "C1|.1 mfd paper|1500 test", { volts: null }, "test volts are no working volts"],
  ["Sym|Name|Rating", "CR1|Diode|400 PIV", { volts: 400 }, "peak inverse volts rate a diode"],
  ["Sym|Name|Rating", "I1|Neon lamp|1/25 W", { watts: 0.04 }, "any fraction of a watt"],
])("under %s, %s is %j: %s", (heads, row, expected, _why) =>
  expect(partOf(`${heads}\n${row}`, row.split("|")[0]!, {}, "|")).toMatchObject(expected),
);

test.each([
  ["Sym|Value|Rating", "C1|20-20-20 mfd|450-450-25", "a rating for each section in one cell"],
  [
    "Sym|A mfd|A volts|B mfd|B volts|C mfd|C volts",
    "C1|20|450|20|450|20|25",
    "sections and volts in columns of their own",
  ],
])("under %s, %s is a can of three: %s", (heads, row) =>
  expect(partOf(`${heads}\n${row}`, "C1", {}, "|").sections).toEqual(
    [450, 450, 25].map((volts) => ({ suffix: null, farads: 20e-6, volts })),
  ),
);
