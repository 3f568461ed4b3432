import { expect, test } from "vitest";
import { isDitto, withWordsAbove } from "../../../../src/core/read/records/ditto.js";
import { partOf } from "../readText.js";

test.each(['"', '"      "     "', "do.", "- do -", "''  ''"])("%s says as above", (text) => {
  expect(isDitto(text, false)).toBe(true);
});

test.each(["", "-", "1/2 W", "dot"])("%s does not", (text) => {
  expect(isDitto(text, false)).toBe(false);
});

test("a mark behind a new value takes the rest of the line above", () => {
  expect(withWordsAbove(".047 MFD  do.", ".022 MFD 600V paper")).toBe(".047 MFD  600V paper");
  const text = `R1    47K, 1/2W, 10% composition
R2     "      "     "      "
R3    68K       do.
R4    1.5 MEG   do.`;
  expect(partOf(text, "R2")).toMatchObject({ value: 47e3, watts: 0.5, construction: "composition" });
  expect(partOf(text, "R4")).toMatchObject({ value: 1.5e6, watts: 0.5, tolerance: { minus: 0.1, plus: 0.1 } });
});

test("a mark before a new tolerance takes the rest of the line above", () => {
  expect(withWordsAbove("do. (5%)", "150,000 ohms 1/2 W (10%)")).toBe("(5%) 150,000 ohms 1/2 W ()");
});
