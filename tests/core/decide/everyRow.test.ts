import { describe, expect, test } from "vitest";
import { type Action, decide, defaultRules, type ListedPart } from "../../../src/core/index.js";
import { partOf, rate, ruled } from "../rate/partOf.js";

type Stated = Partial<ListedPart>;

const TEN = { minus: 0.1, plus: 0.1 };

/** A part of every type, what is done with it on sight, and what takes its place. Common practice, as the rows' sources say. */
const OF_EVERY_TYPE: readonly (readonly [string, Stated, Action, string | null, string])[] = [
  ["carbon_comp", { value: 220e3 }, "test", "220 k", "half of those read are out"],
  ["carbon_film_old", { value: 681e3 }, "test", "681 k", "a meter's value is in E96"],
  ["wirewound", { value: 400, watts: 10 }, "test", "400 Ω", "old wirewound values are still sold"],
  ["strip_ww", { value: 1500, watts: 5 }, "test", "1.5 k", "a section on its own"],
  ["metal_clad_ww", { value: 100, watts: 25 }, "test", "100 Ω", "25 W is not doubled"],
  ["cathode_r", { value: 250, watts: 1 }, "test", "250 Ω", "the tube's current rests on it"],
  ["bleeder", { value: 22e3, watts: 5 }, "test", "22 k", "nearest"],
  ["hv_divider", { value: 10e6, watts: 0.25 }, "test", "10 M", "metal glaze is made at 10 M"],
  ["fusible", { value: 5, watts: 5 }, "test", "5 Ω", "same ohms though 5 is in no series"],
  ["ballast", {}, "test", null, "the string's current is not known"],
  ["thermistor", { value: 120 }, "test", "120 Ω", "same cold and hot"],
  ["line_cord_r", {}, "replace", null, "four schools"],
  ["printed_rc", {}, "test", null, "split first"],
  ["paper_wax", { value: 2e-8 }, "replace", "0.022 µF", ".02 is .022"],
  ["paper_moulded", { value: 1e-7 }, "replace", "0.1 µF", "paper inside"],
  ["paper_bathtub", { value: 5e-7 }, "test", "0.47 µF", ".5 is .47 within 20 %"],
  ["paper_block", { value: 1e-6 }, "replace", "1 µF", "one section"],
  ["mica_foil", { value: 1e-10 }, "keep", "100 pF", "leave it"],
  ["mica_silver", { value: 4.7e-11 }, "test", "47 pF", "silver creeps"],
  ["ceramic_disc", { value: 5e-9 }, "keep", "0.0047 µF", "leave it"],
  ["ceramic_tc", { value: 2.7e-11 }, "keep", "27 pF", "same letters"],
  ["ceramic_feedthrough", { value: 1e-9 }, "keep", "0.001 µF", "its body belongs to the circuit"],
  ["ceramic_hv", { value: 5e-10, volts: 20e3 }, "test", "680 pF", "not below"],
  ["film_old", { value: 1e-7 }, "keep", "0.1 µF", "film does not leak"],
  ["elec_single", { value: 4e-5, volts: 450 }, "replace", "47 µF", "not below"],
  ["elec_multi", { value: 2e-5, volts: 450 }, "replace", "22 µF", "a section on its own"],
  ["elec_can_insulated", { value: 1e-5, volts: 300 }, "replace", "10 µF", "not below"],
  ["elec_nonpolar", { value: 4e-6 }, "test", "3.9 µF", "nearest within 10 %"],
  ["elec_bias", { value: 2.5e-5 }, "replace", "33 µF", "not below"],
  ["tantalum", { value: 4.7e-6, volts: 35 }, "test", "4.7 µF", "it fails short"],
  ["oil", { value: 2e-6, volts: 600 }, "test", "2.2 µF", "not below"],
  ["trimmer", { valueMin: 3e-12, valueMax: 3e-11 }, "keep", "Same type, used or old stock", "cleaned it goes on"],
  ["air_variable", {}, "keep", "Same type, used or old stock", "air does not age"],
  ["selenium", {}, "replace", "silicon 1000 V, 68 Ω 5 W in series", "fumes"],
  ["silicon_rectifier", {}, "test", "Silicon rectifier, 1 A, 1000 V", "a meter tells"],
  ["copper_oxide", {}, "test", "Same type, used or old stock", "the scale was drawn for it"],
  ["tube_rectifier", {}, "keep", "Same type, used or old stock", "its warm-up belongs to the filters"],
  ["germanium_diode", {}, "test", "Germanium point contact, old stock", "its low drop is what works"],
  ["pot", { value: 2.5e5 }, "test", "250 k", "cleaning cures most"],
  ["pot_switch", {}, "test", "Same type, used or old stock", "it must break cleanly"],
  ["fuse", { printed: "3/4 amp" }, "test", "0.75 A, 250 V", "same current"],
  ["lamp", { printed: "No. 44" }, "keep", "type 44: 6-8 V 0.25 A, bayonet, blue bead", "same current"],
  ["neon", { printed: "neon" }, "test", "Same type, used or old stock", "strike volts"],
  ["vibrator", {}, "test", "Same type, used or old stock", "the buffer first"],
  ["transformer", {}, "check", null, "never ordered"],
  ["cord_plug", {}, "replace", "Same type, used or old stock", "insulation cracks"],
  ["tube", {}, "keep", null, "never ordered"],
  ["transistor", {}, "test", "Same type, used or old stock", "the electrolytics first"],
  ["unknown", {}, "ask", null, "what it is decides"],
];

const decided = (className: string, role: string | null, stated: Stated) => {
  const part = partOf(className, role, stated);
  const { rule, settings } = ruled(part);
  return { rule, decision: decide(part, rule, settings), ratings: rate(part) };
};

describe("a part of every type", () => {
  test.each(OF_EVERY_TYPE)("%s", (className, stated, action, text) => {
    const { rule, decision, ratings } = decided(className, null, stated);
    expect(rule.classRow.id).toBe(className);
    expect(decision.action).toBe(action);
    expect(decision.because).toContain(rule.classRow.because);
    expect(ratings.aim?.text ?? null).toBe(text);
  });
});

const PAPER = { value: 1e-7, volts: 400 };
const WET = { value: 2e-5, volts: 350 };

/** A part in every use, and what the use changes against the type's own row: what is fitted, or what is watched or done. */
const IN_EVERY_USE: readonly (readonly [string, string, Stated, Record<string, unknown>])[] = [
  ["general", "paper_wax", PAPER, { action: "replace", text: "0.1 µF" }],
  ["coupling_grid", "mica_foil", { value: 1e-10 }, { action: "test", caution: "coupling_leak" }],
  ["grid_leak", "carbon_comp", { value: 5e5 }, { text: "510 k", caution: "grid_max" }],
  ["screen_bypass", "paper_wax", PAPER, { because: "leak burns the dropping resistor" }],
  ["cathode_bypass", "elec_single", { value: 1e-5, volts: 25 }, { text: "10 µF", volts: 50, caution: "polarity" }],
  ["avc", "paper_wax", { value: 5e-8 }, { text: "0.047 µF" }],
  ["tone", "film_old", { value: 5e-8 }, { text: "0.047 µF" }],
  ["first_filter", "elec_single", WET, { text: "22 µF", caution: "first_filter_limit" }],
  ["later_filter", "elec_single", WET, { text: "22 µF", caution: "warmup_peak" }],
  ["bias_supply", "elec_single", WET, { text: "22 µF", caution: "bias_first" }],
  ["across_line", "ceramic_disc", PAPER, { action: "replace", technology: "x_class", caution: "x_class" }],
  ["line_to_chassis", "mica_foil", { value: 1e-8 }, { action: "replace", technology: "y_class", caution: "y_class" }],
  ["antenna_isolation", "film_old", { value: 2e-9 }, { action: "replace", text: "0.0022 µF", technology: "y_class" }],
  ["float_ground", "film_old", PAPER, { action: "replace", text: null, caution: "live_chassis" }],
  ["oscillator", "paper_wax", { value: 3e-10 }, { text: "300 pF", technology: "silver_mica", caution: "tc_match" }],
  ["tuned", "paper_wax", { value: 1e-9 }, { text: "0.001 µF", technology: "silver_mica", caution: "realign" }],
  ["timing", "paper_wax", { value: 1e-8 }, { text: "0.01 µF", technology: "polypropylene" }],
  ["pulse", "carbon_comp", { value: 470 }, { text: "470 Ω", technology: "ceramic_comp", caution: "res_pulse" }],
  ["boost", "paper_wax", PAPER, { technology: "pp_film_foil", volts: 1600, caution: "xray" }],
  ["buffer", "film_old", { value: 1e-8 }, { action: "replace", text: "0.01 µF", volts: 2000, caution: "buffer_first" }],
  ["output_plate", "paper_wax", { value: 1e-8 }, { technology: "pp_film_foil", volts: 1000, caution: "dvdt" }],
  ["grid_stop", "carbon_comp", { value: 1000 }, { technology: "carbon_film", caution: "ww_inductance" }],
  ["plate_load", "carbon_comp", { value: 100e3 }, { text: "100 k", caution: "res_voltage" }],
  ["screen_drop", "carbon_comp", { value: 22e3, watts: 1 }, { technology: "metal_oxide", caution: "heat_standoff" }],
  ["feedback", "carbon_comp", { value: 25e3, tolerance: TEN }, { text: "24 k", low: -0.05 }],
  ["meter", "carbon_film_old", { value: 990e3 }, { text: "681 k + 309 k", technology: "metal_film" }],
  ["heater_drop", "wirewound", { value: 150, watts: 10 }, { text: "150 Ω", caution: "heater_string" }],
  ["b_plus_drop", "carbon_comp", { value: 1000, watts: 2 }, { technology: "wirewound", caution: "fire" }],
  ["bleeder", "bleeder", { value: 22e3, watts: 5 }, { text: "22 k", caution: "stored_charge" }],
  ["focus_hv", "carbon_comp", { value: 4.7e6 }, { technology: "hv_metal_glaze", caution: "hv" }],
];

describe("a part in every use", () => {
  test.each(IN_EVERY_USE)("%s: a %s", (role, className, stated, expected) => {
    const { rule, decision, ratings } = decided(className, role, stated);
    expect(rule.roleRow.id).toBe(role);
    const [piece] = ratings.aim?.pieces ?? [];
    const found: Record<string, unknown> = {
      action: decision.action,
      text: ratings.aim?.text ?? null,
      technology: piece?.technology,
      volts: piece?.volts,
      low: rule.low,
      caution: decision.cautions.includes(String(expected.caution)) ? expected.caution : decision.cautions,
      because: decision.because.includes(String(expected.because)) ? expected.because : decision.because,
    };
    for (const [key, value] of Object.entries(expected)) expect(found[key], key).toEqual(value);
  });
});

test("every default row is chosen by one of these parts", () => {
  const chosen = new Set([
    ...OF_EVERY_TYPE.map(([className]) => `class ${className}`),
    ...IN_EVERY_USE.map(([role]) => `role ${role}`),
  ]);
  expect(
    defaultRules()
      .map(({ scope, id }) => `${scope} ${id}`)
      .filter((name) => !chosen.has(name)),
  ).toEqual([]);
});
