import { expect, test } from "vitest";
import { decodeCode } from "../../../../src/core/read/words/codes.js";

test.each<[string, object, string]>([
  // code, what it fixes, why (the specifications named beside the families, from memory)
  ["RC20BF474K", { kind: "resistor", value: 470e3, watts: 0.5, construction: "composition" }, "MIL-R-11"],
  [
    "RCR07G101JS",
    { value: 100, watts: 0.25, tolerance: { minus: 0.05, plus: 0.05 } },
    "a letter of reliability behind",
  ],
  ["RN65B1002F", { value: 10e3, watts: 0.5 }, "characteristic B is rated at 70 degrees"],
  ["RN65C1002F", { value: 10e3, watts: 0.25 }, "characteristic C is rated at 125 degrees"],
  ["RE65G1001", { value: 1000, watts: 10, construction: "wirewound" }, "a power resistor on a chassis"],
  ["RV4NAYSD104A", { kind: "potentiometer", value: 100e3, tolerance: null }, "the letter behind is a taper"],
  ["CE63C100N", { value: 10e-6, dielectric: "electrolytic" }, "electrolytics count microfarads"],
  ["CK62Y102Z", { value: 1e-9, tolerance: { minus: 0.2, plus: 0.8 } }, "a lopsided letter, IEC 60062:2016"],
  ["CC20CH050D", { value: 5e-12, tolerance: { minus: 0.1, plus: 0.1 } }, "half a picofarad on five, IEC 60062:2016"],
  ["CKR06BX104KR", { value: 0.1e-6, dielectric: "ceramic" }, "an established reliability ceramic"],
])("%s is %j: %s", (code, expected, _why) => expect(decodeCode(code)).toMatchObject(expected));

test.each([["RC20BF4744K"], ["12AX7"], ["CM20B10"], ["RESISTOR"]])("%s is no type designation", (text) =>
  expect(decodeCode(text)).toBeNull(),
);
