import { expect, test } from "vitest";
import { partOf } from "../readText.js";

test.each<[string, string, object, string]>([
  // heads, row, what is read, why (common practice)
  [
    "Sym|Value|Unit|Rating|Unit",
    "R1|47|K|125|mW",
    { value: 47e3, watts: 0.125 },
    "units stand in columns of their own",
  ],
  [
    "Sym|Value|Tol|Unit",
    "L1|180|5|uH",
    { value: 180e-6, tolerance: { minus: 0.05, plus: 0.05 } },
    "a column between number and unit",
  ],
  [
    "Sym|Value|Unit|Name",
    "R1|47K|Power supply|Resistor",
    { value: 47e3, section: "Power supply" },
    "a unit may be an assembly",
  ],
  ["Sym|Item|Inductance", "L1|Choke, part of T3|12 H", { value: 12, partOf: "T3" }, "Item names the things"],
  [
    "Ref|What it is|Qty",
    "C1|Mica 100 pF 500 V|1",
    { value: 100e-12, volts: 500 },
    "a head that nobody knows describes them",
  ],
  [
    "Ref|Function|Total resistance|Tap at|Part",
    "R1|Volume|1 meg|300K|K-1",
    { value: 1e6, stockNumber: "K-1" },
    "a known word within a head",
  ],
  [
    "Ref|Orig. value|New value",
    "C1|.05 400V paper|.047 630V film",
    { value: 0.05e-6, volts: 400, dielectric: "paper" },
    "what replaced the part does not describe it",
  ],
  [
    "Sym.|Description|Tol.",
    "R1|33|000 ohms|10%",
    { value: 33e3, tolerance: { minus: 0.1, plus: 0.1 } },
    "a comma of thousands that was not quoted",
  ],
  ["Sym.|Qty|Description", "R1|4|470 ohms", { value: 470, quantity: 4 }, "a count stays a count"],
  [
    "Sym|Name|Stock No.|Type",
    "R1|Resistor|9-1|RC20BF473K",
    { value: 47e3, watts: 0.5 },
    "a type designation among the numbers",
  ],
  ["Pos.|R k\u03a9|C nF|U V|P W", "R1|1.5|||2", { value: 1500, watts: 2 }, "symbols of quantities with their units"],
])("under %s, %s is %j: %s", (heads, row, expected, _why) => {
  const name = row.split("|")[0]!;
  expect(partOf(`${heads}\n${row}`, name, {}, "|")).toMatchObject(expected);
});
