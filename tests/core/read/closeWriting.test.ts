import { describe, expect, test } from "vitest";
import { partOf } from "./readText.js";

describe("values typed close to what stands beside them", () => {
  // Common practice of hobby magazines and service sheets; the expected numbers are those written.
  test.each([
    // text, name, what is read, why
    ["R1-2.2 meg., 1/2 watt resistor", "R1", { value: 2.2e6, watts: 0.5 }, "a stroke behind the name"],
    ["R3-100,000-ohm, 1-watt carbon", "R3", { value: 100e3, watts: 1 }, "a value, not R3 to R100"],
    [".02-600V", "C3", { value: 0.02e-6, volts: 600 }, "a value and its volts, not 0.02 volt"],
    ["2.2 meg ±10", "R5", { value: 2.2e6, tolerance: { minus: 0.1, plus: 0.1 } }, "a bare limit is in percent"],
    [
      "10 mmf ±1 mmf",
      "C9",
      { value: 10e-12, tolerance: { minus: 0.1, plus: 0.1 } },
      "a limit with a unit is an amount",
    ],
    ["Schichtwiderstand 2,2 kOhm 5 %", "W1", { kind: "resistor" }, "W is a German resistor"],
  ])("%s: %s", (text, name, expected, _why) => {
    expect(partOf(text.startsWith(name) ? text : `${name}    ${text}`, name)).toMatchObject(expected);
  });

  test.each([
    ["8x8 mf 450 v", [8e-6, 8e-6], "a can of two"],
    ["16x8 mfd 450 v electrolytic", [16e-6, 8e-6], "a can of two unlike"],
    ["2x500 pF", [500e-12, 500e-12], "two alike"],
    ["8-8-8 mfd., 450 v. electrolytic", [8e-6, 8e-6, 8e-6], "a can of three"],
  ])("C1 %s is %j: %s", (text, farads) => {
    const sections = partOf(`C1    ${text}`, "C1").sections?.map((section) => section.farads) ?? [];
    expect(sections).toHaveLength(farads.length);
    for (const [i, size] of farads.entries()) expect(sections[i]).toBeCloseTo(size, 15);
  });
});
