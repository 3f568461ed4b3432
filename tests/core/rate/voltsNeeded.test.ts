import { describe, expect, test } from "vitest";
import { partOf, rate } from "./partOf.js";

describe("volts of silicon", () => {
  // 2.83 times the rms and 30 % in hand (common practice); 350 V on 117 V wound are 368 V at 123 V: 1,353 V.
  test.each([
    [null, 1000, "at the line: 452 V, bought as 1,000 V stock"],
    [350, 1600, "behind a winding of 350 V"],
  ])("fed by a winding of %s V it is bought for %d V: %s", (windingVolts, volts, _why) => {
    const { aim } = rate(partOf("silicon_rectifier", null), { windingVolts });
    expect(aim?.pieces[0]).toMatchObject({ technology: "silicon", volts });
  });

  test("selenium in a set with a winding gets silicon for that winding", () => {
    expect(rate(partOf("selenium", null), { windingVolts: 350 }).aim?.pieces[0]?.volts).toBe(1600);
  });
});

test("an electrolytic in warm air is said to be one for 105 °C", () => {
  const part = partOf("elec_single", "later_filter", { value: 2e-5, volts: 350 });
  expect(rate(part, { celsius: 65 }).because.join("; ")).toMatch(/a part for 105 °C/);
  expect(rate(part, { celsius: 30 }).because.join("; ")).not.toMatch(/105 °C/);
});
