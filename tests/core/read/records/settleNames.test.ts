import { expect, test } from "vitest";
import { partOf, readText } from "../readText.js";

test("the second of R-1-1 and R-1-2 is no range", () => {
  const text = "R-1-1    10,000 ohms, 1 W.\nR-1-2    10,000 ohms, 1 W.";
  expect(readText(text).parts.map((part) => part.designators)).toEqual([["R-1-1"], ["R-1-2"]]);
  expect(partOf(text, "R-1-2")).toMatchObject({ kind: "resistor", value: 10e3 });
});
