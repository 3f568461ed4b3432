import { describe, expect, test } from "vitest";
import { DEFAULTS_IN_FORCE, type Rule, type RulesInForce, rulesOfText, rulesText } from "../../../src/core/index.js";

const edited = (id: string, change: Partial<Rule>): RulesInForce => ({
  ...DEFAULTS_IN_FORCE,
  rules: DEFAULTS_IN_FORCE.rules.map((rule) => (rule.id === id ? { ...rule, ...change } : rule)),
});

describe("the rules in force as one text", () => {
  test("the defaults are an empty text, and an empty text is the defaults", () => {
    expect(rulesText(DEFAULTS_IN_FORCE)).toBe("");
    expect(rulesOfText(null)).toBe(DEFAULTS_IN_FORCE);
  });

  test.each<[string, RulesInForce]>([
    ["how far to go", { ...DEFAULTS_IN_FORCE, settings: { ...DEFAULTS_IN_FORCE.settings, policy: "conservator" } }],
    ["line volts", { ...DEFAULTS_IN_FORCE, settings: { ...DEFAULTS_IN_FORCE.settings, line_now_V: 231 } }],
    ["a drift limit", edited("carbon_comp", { driftLimit: 30 })],
    ["another technology", edited("paper_wax", { technologies: ["polypropylene"] })],
    ["an action", edited("mica_foil", { action: { trade: "replace", conservator: "test", overhaul: "replace" } })],
    ["a column emptied", edited("paper_wax", { wantVolts: null })],
    ["a rule switched off", { ...DEFAULTS_IN_FORCE, rules: DEFAULTS_IN_FORCE.rules.filter(({ id }) => id !== "avc") }],
    [
      "a rule of one's own",
      {
        ...DEFAULTS_IN_FORCE,
        rules: [...DEFAULTS_IN_FORCE.rules, { ...DEFAULTS_IN_FORCE.rules[0]!, id: "my_own", label: "My own" }],
      },
    ],
  ])("%s comes back as it went", (_, inForce) => {
    expect(rulesOfText(rulesText(inForce))).toEqual(inForce);
  });

  test("a text that is something else is said", () => {
    expect(() => rulesOfText("hello there")).toThrow(/hello there/);
  });
});
