import { expect, test } from "vitest";
import { partOf, readText } from "../readText.js";

const GATHERED = `   Symbol       Description                          Price
   C1   )
   C2   )       .05 mfd., 400 volt                    .22
   C3   )
   C4           .002 mfd., 600 volt                   .20
   R1 )         50,000 ohm, 1/2 watt                  .12
   R2 )`;

test.each(["C1", "C2", "C3"])("a drawn brace says of %s what stands beside it", (name) => {
  expect(partOf(GATHERED, name)).toMatchObject({ value: 0.05e-6, volts: 400, quantity: 1 });
});

test("a brace ends where its rows end", () => {
  expect(partOf(GATHERED, "C4")).toMatchObject({ value: 0.002e-6, volts: 600 });
  expect(partOf(GATHERED, "R2")).toMatchObject({ value: 50e3, watts: 0.5 });
});

test("brackets around designators are no brace", () => {
  expect(readText("100K 1/2W     (R1, R2)\n1 MEG         (R3)").parts.map((part) => part.quantity)).toEqual([2, 1]);
});
