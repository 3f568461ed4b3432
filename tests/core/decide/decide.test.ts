import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Action,
  decide,
  type Evidence,
  type ListedPart,
  type Place,
  type Policy,
  type Reading,
  UNKNOWN_PLACE,
} from "../../../src/core/index.js";
import { partOf, ruled } from "../rate/partOf.js";

const read = (quantity: Reading["quantity"], value: number | null, more: Partial<Reading> = {}): Reading => ({
  quantity,
  value,
  inPlace: false,
  accuracy: 0.01,
  ...more,
});
const ohms = (value: number | null, more: Partial<Reading> = {}) => read("resistance", value, more);
const there = { inPlace: true };

/** What is decided of a part of a class and use, under a policy, with what was read. */
function decided(
  className: string,
  role: string | null,
  stated: Partial<ListedPart>,
  evidence: Evidence & { readonly policy?: Policy; readonly known?: Partial<Place> } = {},
) {
  const part = partOf(className, role, stated);
  const { rule, settings } = ruled(part, evidence.policy ? { policy: evidence.policy } : {});
  return decide(part, rule, settings, { ...evidence, place: { ...UNKNOWN_PLACE, ...evidence.known } });
}

const R100K = { value: 100e3 };
const PAPER = { value: 1e-7, volts: 400 };
const MICA = { value: 2.5e-10, tolerance: { minus: 0.05, plus: 0.05 } };
const WET = { value: 20e-6, volts: 450 };

describe("what is done with an old part", () => {
  // Common practice; parallel paths only lower resistance and only raise capacitance.
  test.each<[string, string, string | null, Partial<ListedPart>, Reading[], Action]>([
    ["+30 % lifted is out", "carbon_comp", null, R100K, [ohms(130e3)], "replace"],
    ["+15 % lifted is in, within 20 %", "carbon_comp", null, R100K, [ohms(115e3)], "keep"],
    ["high in place convicts", "carbon_comp", null, R100K, [ohms(130e3, there)], "replace"],
    ["low in place says nothing", "carbon_comp", null, R100K, [ohms(62e3, there)], "lift"],
    ["in range in place says nothing", "carbon_comp", null, R100K, [ohms(100e3, there)], "lift"],
    ["open in place convicts", "carbon_comp", null, R100K, [ohms(Number.POSITIVE_INFINITY, there)], "replace"],
    ["a short in place may be the neighbour's", "carbon_comp", null, R100K, [ohms(0, there)], "lift"],
    ["a short lifted convicts", "carbon_comp", null, R100K, [ohms(0)], "replace"],
    ["no reading: read it first", "carbon_comp", null, R100K, [], "test"],
    ["just over, by less than the meter's error", "carbon_comp", null, R100K, [ohms(120.5e3)], "test"],
    ["one that will not settle is read again, lifted", "carbon_comp", null, R100K, [ohms(null, there)], "lift"],
    [
      "an open 22 M may be the meter's end",
      "carbon_comp",
      null,
      { value: 22e6 },
      [ohms(Number.POSITIVE_INFINITY)],
      "test",
    ],
    ["wire that reads true stays", "wirewound", null, { value: 2500 }, [ohms(2490)], "keep"],
    [
      "wax paper goes, whatever it reads",
      "paper_wax",
      "screen_bypass",
      PAPER,
      [read("capacitance", 1.02e-7)],
      "replace",
    ],
    ["farads prove nothing about a bathtub's leak", "paper_bathtub", null, PAPER, [read("capacitance", 1e-7)], "test"],
    ["a bathtub that holds stays", "paper_bathtub", null, PAPER, [read("insulation", 900e6)], "keep"],
    ["a bathtub that leaks goes", "paper_bathtub", null, PAPER, [read("insulation", 40e6)], "replace"],
    ["low insulation in place says nothing", "paper_bathtub", null, PAPER, [read("insulation", 4e6, there)], "lift"],
    ["high insulation in place acquits", "paper_bathtub", null, PAPER, [read("insulation", 900e6, there)], "keep"],
    ["a mica that reads true stays", "mica_foil", "oscillator", MICA, [read("capacitance", 2.51e-10)], "keep"],
    ["a mica far off goes", "mica_foil", "oscillator", MICA, [read("capacitance", 4.6e-10)], "replace"],
    [
      "a mica that blocks B+ is tested for leaks",
      "mica_foil",
      "coupling_grid",
      MICA,
      [read("capacitance", 2.5e-10)],
      "test",
    ],
    ["and stays when it holds", "mica_foil", "coupling_grid", MICA, [read("insulation", 5e9)], "keep"],
    [
      "low farads in place convict",
      "ceramic_disc",
      null,
      { value: 1e-8 },
      [read("capacitance", 2e-9, there)],
      "replace",
    ],
    [
      "a dried electrolytic shows by its ESR in place",
      "elec_nonpolar",
      null,
      WET,
      [read("ESR", 200, there)],
      "replace",
    ],
    [
      "ESR and farads together acquit",
      "elec_nonpolar",
      null,
      WET,
      [read("ESR", 2), read("capacitance", 20e-6)],
      "keep",
    ],
    ["ESR alone does not", "elec_nonpolar", null, WET, [read("ESR", 2)], "test"],
    ["an unknown thing is asked about", "unknown", null, {}, [ohms(100)], "ask"],
    ["a transformer is only checked", "transformer", null, {}, [ohms(Number.POSITIVE_INFINITY)], "check"],
    ["an open fuse goes", "fuse", null, {}, [ohms(Number.POSITIVE_INFINITY)], "replace"],
  ])("%s: %s", (_why, className, role, stated, readings, action) => {
    expect(decided(className, role, stated, { readings }).action).toBe(action);
  });

  test.each<[string, Policy, Action]>([
    ["trade replaces on sight", "trade", "replace"],
    ["conservator keeps what passes", "conservator", "keep"],
    ["overhaul replaces", "overhaul", "replace"],
  ])("a paper bypass that passes: %s", (_why, policy, action) => {
    const found = decided("paper_wax", "screen_bypass", PAPER, { policy, readings: [read("insulation", 62e6)] });
    expect(found.action).toBe(action);
    expect(found.policy).toBe(policy);
  });

  test("a kept paper is read again after the burn-in, a replaced one says that it passed", () => {
    const readings = [read("insulation", 62e6)];
    const kept = decided("paper_wax", "screen_bypass", PAPER, { policy: "conservator", readings });
    expect(kept.because).toContain("keep, and read it again after the burn-in");
    const gone = decided("paper_wax", "screen_bypass", PAPER, { policy: "trade", readings });
    expect(gone.because).toContain('replaced as "replace the known bad" has it although it passes');
  });

  test("a coupling capacitor is held to what the next grid demands", () => {
    // 470 k and half a volt at 250 V ask for 235 M (worked by hand from R = V x Rg / dV): 220 M passes the trade's 200 M only.
    const readings = [read("insulation", 220e6)];
    const known = { volts: 250, gridOhms: 470e3 };
    expect(decided("paper_bathtub", "coupling_grid", PAPER, { readings, known }).action).toBe("replace");
    expect(decided("paper_bathtub", "coupling_grid", PAPER, { readings }).action).toBe("keep");
  });

  test("a reformed electrolytic stays under the conservator's policy when leakage and ESR pass", () => {
    // JAN-C-62: 20 µF at 450 V may leak 1.1 mA.
    const pass = [read("leakage", 0.9e-3), read("ESR", 3)];
    expect(decided("elec_single", null, WET, { policy: "conservator", readings: pass }).action).toBe("keep");
    const leaky = [read("leakage", 1.3e-3), read("ESR", 3)];
    expect(decided("elec_single", null, WET, { policy: "conservator", readings: leaky }).action).toBe("replace");
  });

  test("a burnt body goes whatever it reads", () => {
    const findings = [{ text: "burnt body", bad: true }];
    const found = decided("carbon_comp", null, R100K, { readings: [ohms(100e3)], findings });
    expect(found.action).toBe("replace");
    expect(found.because).toContain("burnt body");
  });

  test("a marked 5 % part is held to 20 % by default and to its mark by choice", () => {
    const part = partOf("carbon_comp", null, { ...R100K, tolerance: { minus: 0.05, plus: 0.05 } });
    const under = (choice: string) => {
      const { rule, settings } = ruled(part, { r_drift_rule: choice });
      return decide(part, rule, settings, { readings: [ohms(112e3)] }).action;
    };
    expect([under("max(marked, general)"), under("marked"), under("general"), under("half-marked")]).toEqual([
      "keep",
      "replace",
      "keep",
      "replace",
    ]);
  });

  test("a meter too coarse for a close part condemns it by no choice of verdict: a better one has to read it", () => {
    const close = { ...R100K, tolerance: { minus: 0.01, plus: 0.01 } };
    const part = partOf("carbon_film_old", null, close);
    const { rule, settings } = ruled(part, { guard: "strict" });
    const read = (value: number) =>
      decide(part, rule, settings, { readings: [ohms(value, { accuracy: 0.05 })] }).action;
    expect([read(100e3), read(120e3)]).toEqual(["test", "replace"]);
  });

  test("stops stand before looks and notes", () => {
    const { cautions } = decided("paper_wax", "line_to_chassis", { value: 1e-8 });
    expect(cautions.slice(0, 2).sort()).toEqual(["mains", "y_class"]);
  });

  test("the set adds what bears on the part: X-rays behind new silicon, the live chassis at the line", () => {
    const set = { pictureTube: true, liveChassis: true };
    expect(decided("selenium", null, {}, { set }).cautions).toContain("xray");
    expect(decided("selenium", null, {}).cautions).not.toContain("xray");
    expect(decided("paper_wax", "across_line", PAPER, { set }).cautions).toContain("live_chassis");
    expect(decided("paper_wax", "avc", PAPER, { set }).cautions).not.toContain("live_chassis");
  });

  test("a test says what to read", () => {
    expect(decided("carbon_comp", null, R100K).toRead[0]).toMatch(/^resistance, power off/);
  });
});

describe("laws of deciding", () => {
  const CLASSES = ["carbon_comp", "wirewound", "paper_bathtub", "mica_foil", "elec_single", "paper_wax", "tantalum"];
  const anyReading = fc.record({
    quantity: fc.constantFrom<Reading["quantity"]>("resistance", "capacitance", "insulation", "leakage", "ESR"),
    value: fc.double({ min: 1e-12, max: 1e9, noNaN: true }),
    inPlace: fc.boolean(),
    accuracy: fc.constantFrom(0, 0.01, 0.05),
  });

  test("a stricter policy never keeps more", () => {
    const keeps = (policy: Policy, className: string, reading: Reading) =>
      decided(className, null, { value: 1e-6, volts: 400 }, { policy, readings: [reading] }).action === "keep";
    fc.assert(
      fc.property(fc.constantFrom(...CLASSES), anyReading, (className, reading) => {
        if (keeps("trade", className, reading)) expect(keeps("conservator", className, reading)).toBe(true);
        if (keeps("overhaul", className, reading)) expect(keeps("trade", className, reading)).toBe(true);
      }),
    );
  });

  test("a lifted reading equal to nominal never says replace on value", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e7, noNaN: true }), fc.constantFrom(0, 0.01, 0.05), (value, accuracy) => {
        const found = decided("carbon_comp", null, { value }, { readings: [ohms(value, { accuracy })] });
        expect(found.action).toBe("keep");
      }),
    );
  });

  test("in place a resistor that reads no higher than its limit is never condemned, and never acquitted", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1.2, noNaN: true }), (share) => {
        const { action } = decided("carbon_comp", null, R100K, { readings: [ohms(100e3 * share, there)] });
        expect(action).toBe("lift");
      }),
    );
  });
});
