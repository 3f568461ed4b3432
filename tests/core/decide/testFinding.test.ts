import { describe, expect, test } from "vitest";
import { type TestRead, testFinding } from "../../../src/core/index.js";

describe("the test of a part without a value of its own", () => {
  // Limits are common practice: 0.2 to 0.4 V for germanium, 0.4 to 0.7 V for silicon, 55 to 90 V for small neon, 80 % of the supply.
  test.each<[string, TestRead, boolean, string]>([
    ["germanium_diode", { forwardVolts: 0.3 }, false, "a sound drop"],
    ["germanium_diode", { forwardVolts: 0.9 }, true, "no germanium any more"],
    ["germanium_diode", { forwardVolts: 0.3, reverseOhms: 30e3 }, true, "it leaks in reverse"],
    ["silicon_rectifier", { forwardVolts: 0.55, reverseOhms: 20e6 }, false, "sound both ways"],
    ["silicon_rectifier", { reverseOhms: 40e3 }, true, "leaks"],
    ["neon", { strikeVolts: 70 }, false, "strikes"],
    ["neon", { strikeVolts: 118 }, true, "aged"],
    ["vibrator", { startVolts: 4.5, supplyVolts: 6 }, false, "75 %"],
    ["vibrator", { startShare: 0.92 }, true, "told as a share"],
    ["mica_silver", { dissipation: 0.01 }, true, "0.002 is the limit"],
    ["paper_bathtub", { caseOhms: 30e6 }, true, "200 MΩ to the case"],
    ["vibrator", { startVolts: 5.5, supplyVolts: 6 }, true, "92 %"],
  ])("%s %o is bad: %s (%s)", (className, read, bad) => {
    expect(testFinding(className, read)?.bad).toBe(bad);
  });

  test("nothing read, or a type without such a test, says nothing", () => {
    expect(testFinding("neon", { strikeVolts: null })).toBeNull();
    expect(testFinding("vibrator", { startVolts: 5 })).toBeNull();
    expect(testFinding("carbon_comp", { forwardVolts: 0.3 })).toBeNull();
  });
});
