import { describe, expect, test } from "vitest";
import {
  BODY_VOLTS,
  balancingOhmsFor,
  dcStringShare,
  defaultSettings,
  type ListedPart,
  type Place,
  type Settings,
} from "../../../src/core/index.js";
import { partOf, rate } from "./partOf.js";

const carbon = (stated: Partial<ListedPart>, place: Partial<Place> = {}) =>
  rate(partOf("carbon_comp", null, stated), place);

describe("checks from outside", () => {
  test("old composition bodies bear what the generic RC07, RC20 and RC32 data sheets say", () => {
    // Carbon composition data of three makers agree: 1/4 W 250 V, 1/2 W 350 V, 1 W 500 V.
    expect(BODY_VOLTS.carbon_comp_old?.slice(0, 3)).toEqual([
      [0.25, 250],
      [0.5, 350],
      [1, 500],
    ]);
  });

  test("a new resistor is rated at twice what it burns", () => {
    // NEETS Module 1, chapter 3: the wattage rating is twice the dissipation expected.
    expect(defaultSettings.res_load_max).toBe(0.5);
    // Heathkit T-2 guide: 10 mA through a drop of 100 V burns 1 W; twice that is 2 W.
    const { aim, figures } = carbon({ value: 10e3, watts: 1 }, { amps: 0.01 });
    expect(figures?.lostWatts).toBeCloseTo(1, 9);
    expect(aim?.pieces[0]?.watts).toBe(2);
  });

  test("volts rule above the critical resistance, watts below it", () => {
    // MIL-R-10509J 3.6: E = sqrt(P R), never above the style's limit. 1/2 W and 350 V: 350^2 / 0.5 = 245 k.
    const bodyOf = (ohms: number) => carbon({ value: ohms, watts: 0.25 }, { volts: 240 }).aim?.pieces[0];
    // 240 V over 100 k burns 0.58 W: 2 W. Over 1 M it burns 0.06 W, but 80 % of 300 V needs a 350 V body, 1 W.
    expect(bodyOf(100e3)?.watts).toBe(2);
    expect(bodyOf(1e6)).toMatchObject({ watts: 1, volts: 350 });
  });

  test.each([
    // farads, volts, hertz, milliamperes: 2 pi f C V as recomputed in the safety references.
    [0.01e-6, 120, 60, 0.4524],
    [0.01e-6, 132, 60, 0.4976],
    [0.0047e-6, 120, 60, 0.2126],
    [0.01e-6, 230, 50, 0.7226],
  ])("%d farads at %d V %d Hz pass %d mA", (farads, volts, hertz, milliamps) => {
    const settings: Settings = { line_now_V: volts, line_hz: hertz };
    const { figures } = rate(partOf("paper_wax", "line_to_chassis", { value: farads }), {}, settings);
    expect((figures?.leakAmps ?? 0) * 1000).toBeCloseTo(milliamps, 4);
  });

  test.each([
    // IEC 60384-14: Y2 is rated 150 to 300 V a.c. (2005 edition); the part must bear the line.
    [100, 250],
    [123, 250],
    [230, 275],
    [240, 275],
  ])("on a line of %d V a class Y part is rated %d V a.c.", (line, volts) => {
    const { aim, voltsKind } = rate(
      partOf("paper_wax", "line_to_chassis", { value: 2.2e-9 }),
      {},
      { line_now_V: line },
    );
    expect(aim?.pieces[0]?.volts).toBe(volts);
    expect(voltsKind).toBe("ac");
  });

  test("a class Y place never takes a class X part; an X place may take Y", () => {
    // IEC 60384-14 practice: Y may replace X, X must not replace Y.
    const rejected = (role: string) =>
      rate(partOf("paper_wax", role, { value: 1e-8 })).rejected.map(({ what }) => what);
    expect(rejected("line_to_chassis")).toContain("a part marked class X alone");
    expect(rejected("across_line")).not.toContain("a part marked class X alone");
  });

  test("an X part above 0.1 µF gets a bleed resistor that takes the peak of 132 V down to 34 V in a second", () => {
    // 34 V in 1 s is the rule of the IEC 60335-1 and 60065 style; from 1.414 x 132 V that takes 1.703 time constants.
    const { because } = rate(partOf("paper_wax", "across_line", { value: 0.22e-6 }));
    expect(because.join(" ")).toMatch(/bleed resistor of 2.2 M or less/);
    expect(186.7 * Math.exp(-1 / (2.2e6 * 0.22e-6))).toBeLessThan(34);
  });

  test("warm-up: the peak of a 385 V winding rules out every single electrolytic", () => {
    // University of Queensland physics museum: about 525 V in the first seconds; the peak without load is 544 V.
    const { figures, aim } = rate(
      partOf("elec_single", "first_filter", { value: 16e-6, volts: 450 }),
      { windingVolts: 385 },
      { line_now_V: 117 },
    );
    expect(figures?.warmUpVolts).toBeCloseTo(544.5, 1);
    expect(aim?.pieces.filter(({ kind }) => kind === undefined)).toHaveLength(2);
  });

  test("balancing resistors hold a pair within its ratings when one leaks as much as JAN-C-62 allows and the other not at all", () => {
    // 68 µF at 350 V: 0.025 x 68 + 0.3 = 2 mA is 175 k; the other 10 M. Two ratings of 315 V bear 520 V.
    const farads = 68e-6;
    const ohms = balancingOhmsFor({ farads, ratedVolts: 350, volts: 520 });
    const apart = dcStringShare([1.2e6, 10e6], 520, ohms);
    const alone = dcStringShare([1.2e6, 10e6], 520);
    expect(Math.max(...apart)).toBeLessThan(350);
    expect(Math.max(...alone)).toBeGreaterThan(350);
  });
});
