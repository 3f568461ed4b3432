import { expect, test } from "vitest";
import { defaultRules, fromInWords } from "../../../src/core/index.js";

test.each([
  ["type paper_wax", "type Wax paper tubular", "where a figure of the list was left unsaid"],
  ["a default, type paper_wax", "a default, type Wax paper tubular", "behind other words"],
  ["use plate_load", "use Plate load", "a use"],
  ["the list, line 3", "the list, line 3", "no row at all"],
  ["type my_own", "type my_own", "a row that is gone"],
])("%s is said as %s: %s", (from, words) => {
  expect(fromInWords(defaultRules(), from)).toBe(words);
});
