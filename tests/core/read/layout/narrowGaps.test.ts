import { expect, test } from "vitest";
import { partOf, readText } from "../readText.js";

const PAGE = `R 1 - 50 M ohms ½ w.        C 1 - .0005 mfd. mica
R 2 - 1 Meg ohm ½ w.        C 2 - .1 mfd. 200 v. paper
R 3 - 250 M ohms vol. cont. C 3 - 8 mfd. 475 v. elect.
R 4 - 300 ohms 1 w.         C 4 - .02 mfd. 400 v. paper`;

test("an entry that runs up to the column beside it leaves that column its part", () => {
  expect(readText(PAGE).parts.map(({ designators }) => designators[0])).toEqual(
    ["R1", "C1", "R2", "C2", "R3", "C3", "R4", "C4"], // each line holds two
  );
  expect(partOf(PAGE, "R3")).toMatchObject({ kind: "potentiometer", value: 250e3, volts: null });
  expect(partOf(PAGE, "C3")).toMatchObject({ value: 8e-6, volts: 475, dielectric: "electrolytic" });
});

test("a name in running words parts no line where no column begins", () => {
  const text = "R1  47K   from C4 to C5\nR2  2.2K  screen";
  expect(readText(text).parts.map(({ designators }) => designators)).toEqual([["R1"], ["R2"]]);
});

test("letters typed apart from their number name a part where a stroke follows", () => {
  expect(partOf("R 7 - 470K 1/2W\nC 2 - .05 mfd", "C2")).toMatchObject({ kind: "capacitor", value: 5e-8 });
});
