import { describe, expect, test } from "vitest";
import { PARTS_SHEET, RULES_SHEET } from "../../../src/core/index.js";

describe("what a person types into a column of amounts", () => {
  const { voltsThere, ampsThere, celsiusThere, roomLength, watts } = PARTS_SHEET.columns;
  // Conversions by definition: an inch is 25.4 mm, C = (F - 32) / 1.8.
  test.each([
    [voltsThere, "250", 250, "a bare figure is in the column's unit"],
    [voltsThere, 250, 250, "a number is a number"],
    [voltsThere, "1.6 kV", 1600, "a unit of its own is turned into the column's"],
    [voltsThere, "350 V", 350, "the column's own unit may stand behind it"],
    [voltsThere, "6,3", 6.3, "a comma is a point"],
    [voltsThere, "-60", -60, "a bias supply lies below the chassis"],
    [voltsThere, "about 200", null, "words are no figure"],
    [voltsThere, "3 mA", null, "amperes are no volts"],
    [ampsThere, "65 mA", 0.065, "milliamperes are no amperes"],
    [watts, "1/2 W", 0.5, "as lists write it"],
    [roomLength, "60", 60, "millimetres"],
    [roomLength, "3/8 in", 9.525, "inches"],
    [roomLength, "4 cm", 40, "centimetres"],
    [celsiusThere, "60 °C", 60, "degrees Celsius"],
    [celsiusThere, "140 F", 60, "degrees Fahrenheit"],
    [celsiusThere, "hot", null, "no figure"],
    [celsiusThere, "", null, "empty is not known"],
  ])("%# %j is read as %j: %s", (column, cell, value, _why) => {
    const read = column.read(cell);
    if (value === null) expect(read).toBeNull();
    else expect(read).toBeCloseTo(value, 9);
  });
});

describe("what a person types into a column of words", () => {
  const { valueMode, technologies, cautions, leastVolts, driftLimit } = RULES_SHEET.columns;
  test.each([
    [valueMode, "not below", "not_below"],
    [valueMode, "not_below", "not_below"],
    [valueMode, "Not Below", "not_below"],
    [valueMode, "below", null],
    [technologies, "Metal film > Carbon film", "metal_film > carbon_film"],
    [technologies, "metal_film>carbon_film", "metal_film > carbon_film"],
    [technologies, "metal_film > unobtainium", null],
    [cautions, "class Y, mains", "y_class, mains"],
    [cautions, "y_class mains line_leak", "y_class, mains, line_leak"],
    [cautions, "warm-up peak", "warmup_peak"],
    [leastVolts, "450", "450"],
    [leastVolts, "warm-up peak", "warmup_peak"],
    [leastVolts, "twice_working", "twice_working"],
    [leastVolts, "lots", null],
    [driftLimit, "as marked", "marked"],
    [driftLimit, 0.3, "0.3"],
  ])("%# %j is read as %j", (column, cell, name) => {
    expect(column.read(cell)).toBe(name);
  });

  test("every word that a column writes is read back as it went", () => {
    for (const column of [
      valueMode,
      RULES_SHEET.columns.ladder,
      RULES_SHEET.columns.gate,
      RULES_SHEET.columns.series,
    ]) {
      for (const word of column.words!) expect(column.write(column.read(word) as never)).toBe(word);
    }
  });
});
