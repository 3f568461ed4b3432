import { describe, expect, test } from "vitest";
import { readTemperatureCode } from "../../../../src/core/index.js";

describe("how a ceramic changes with temperature", () => {
  test.each([
    ["NP0", 0, null],
    ["NPO", 0, null],
    ["C0G", 0, 30],
    ["COG", 0, 30],
    ["N750", -750, null],
    ["P100", 100, null],
    ["U2J", -750, 120],
    ["S2H", -330, 60],
  ])("%s is %d millionths for each kelvin, give or take %s", (text, ppmPerKelvin, ppmLimits) => {
    expect(readTemperatureCode(text)).toEqual({ class: "I", ppmPerKelvin, ppmLimits });
  });

  test("X7R changes by 15 % at most from -55 to 125 °C", () => {
    expect(readTemperatureCode("x7r")).toEqual({
      class: "II",
      fromCelsius: -55,
      toCelsius: 125,
      change: { minus: 0.15, plus: 0.15 },
    });
  });

  test.each(["", "Q7R", "U4J", "X7", "X7RR", "hello"])('"%s" is no such code', (text) => {
    expect(() => readTemperatureCode(text)).toThrow("Write it like NP0");
  });
});
