import { expect, test } from "vitest";
import { partOf } from "../readText.js";

const both = (ratio: number) => ({ minus: ratio, plus: ratio });

test.each<[string, object | null, string]>([
  // row under Ref, Value, Tol; tolerance; why (IEC 60062:2016 unless another source is named)
  ["R1|4k99|B", both(0.001), "a letter of precision parts"],
  ["C1|10u|Z", { minus: 0.2, plus: 0.8 }, "a lopsided letter"],
  ["C2|5 pF|D", both(0.1), "half a picofarad on five"],
  ["R2|33|none", both(0.2), "no fourth band (common practice)"],
  ["R3|4700|silver", both(0.1), "a fourth band in words"],
  ["R4|10K|10% / 5%", null, "two that contradict (common practice)"],
])("%s has %j: %s", (row, tolerance, _why) =>
  expect(partOf(`Ref|Value|Tol\n${row}`, row.split("|")[0]!, {}, "|").tolerance).toEqual(tolerance),
);
