import { describe, expect, test } from "vitest";
import { DEFAULTS_IN_FORCE, type Policy, ruleFor } from "../../../src/core/index.js";

const under = (policy: Policy) => ({ ...DEFAULTS_IN_FORCE, settings: { ...DEFAULTS_IN_FORCE.settings, policy } });

describe("the rule that holds for a part", () => {
  test.each<[string, string | null, string, string]>([
    // type, use, technology aimed first, why
    ["paper_wax", null, "polyester", "no use known: the type's row stands"],
    ["paper_wax", "line_to_chassis", "y_class", "a line place outranks the type"],
    ["ceramic_disc", "across_line", "x_class", "also for a part that would stay"],
    ["ceramic_tc", "oscillator", "same", "a coded ceramic stays what it is in any ordinary use"],
    ["ceramic_tc", "line_to_chassis", "y_class", "but not where the line stands on it"],
    ["fusible", "b_plus_drop", "fusible", "a fusible part stays fusible"],
    ["carbon_comp", "timing", "metal_film", "only technologies of its own kind are taken from the use"],
    ["paper_wax", "timing", "polypropylene", "the same use, seen from a capacitor"],
    ["elec_single", "grid_stop", "alu_axial", "a use that names no technology of this kind leaves the type's"],
    ["carbon_comp", "line_to_chassis", "metal_film", "a resistor is no class Y capacitor"],
  ])("a %s used as %s aims at %s: %s", (className, role, technology, _why) => {
    expect(ruleFor(DEFAULTS_IN_FORCE, className, role).technologies[0]).toBe(technology);
  });

  test.each<[string, string | null, Policy, string, string]>([
    ["paper_wax", "screen_bypass", "trade", "replace", "the notorious go on sight"],
    ["paper_wax", "screen_bypass", "conservator", "test", "test first, keep what passes"],
    ["carbon_comp", "plate_load", "overhaul", "replace", "all but the stable"],
    ["mica_foil", "coupling_grid", "trade", "test", "a mica that blocks B+ from a grid is tested, not trusted"],
    ["mica_foil", "tuned", "trade", "keep", "elsewhere it stays"],
    ["ceramic_disc", "line_to_chassis", "conservator", "replace", "a line place is no matter of policy"],
    ["unknown", null, "trade", "ask", "what it is decides everything else"],
  ])("a %s used as %s under %s: %s (%s)", (className, role, policy, action, _why) => {
    expect(ruleFor(under(policy), className, role).action).toBe(action);
  });

  test("a fusible resistor keeps its watts whatever it is used as", () => {
    const rule = ruleFor(DEFAULTS_IN_FORCE, "fusible", "timing");
    expect([rule.powerMode, rule.valueMode, rule.low, rule.high]).toEqual(["exact", "exact", 0, 0]);
  });

  test("every column says which row decided it", () => {
    const { decidedBy } = ruleFor(DEFAULTS_IN_FORCE, "elec_single", "later_filter");
    expect(decidedBy).toMatchObject({
      high: "use later_filter",
      series: "type elec_single",
      action: "type elec_single",
    });
  });

  test("cautions of type and use stand together, each once", () => {
    const { cautions } = ruleFor(DEFAULTS_IN_FORCE, "elec_single", "first_filter");
    expect(cautions).toEqual([...new Set(cautions)]);
    expect(cautions).toEqual(expect.arrayContaining(["polarity", "warmup_peak", "first_filter_limit"]));
  });

  test("a row switched off leaves the question, or no special duty", () => {
    const without = (id: string) => ({
      ...DEFAULTS_IN_FORCE,
      rules: DEFAULTS_IN_FORCE.rules.filter((rule) => rule.id !== id),
    });
    expect(ruleFor(without("paper_wax"), "paper_wax", null).action).toBe("ask");
    expect(ruleFor(without("line_to_chassis"), "paper_wax", "line_to_chassis").technologies[0]).toBe("polyester");
  });

  test("a setting moves the figure of a default row, and an edited row outranks the setting", () => {
    const settings = { ...DEFAULTS_IN_FORCE.settings, elec_later_excess_pct: 50 };
    expect(ruleFor({ ...DEFAULTS_IN_FORCE, settings }, "elec_single", "later_filter").high).toBe(0.5);
    const rules = DEFAULTS_IN_FORCE.rules.map((rule) => (rule.id === "later_filter" ? { ...rule, high: 0.8 } : rule));
    expect(ruleFor({ rules, settings }, "elec_single", "later_filter").high).toBe(0.8);
  });

  test("a type or a use that no row names is said, with what would work", () => {
    expect(() => ruleFor(DEFAULTS_IN_FORCE, "papr", null)).toThrow(/"papr" is not known/);
    expect(() => ruleFor(DEFAULTS_IN_FORCE, "paper_wax", "nowhere")).toThrow(/"nowhere" is not known/);
  });
});
