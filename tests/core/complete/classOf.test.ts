import { describe, expect, test } from "vitest";
import { classOf, type ListedPart, roleOf, type Sure } from "../../../src/core/index.js";
import { listed } from "../listed.js";

type Row = readonly [says: string, part: Partial<ListedPart>, era: number | null, id: string, sure: Sure];

const cap = (part: Partial<ListedPart>): Partial<ListedPart> => ({ kind: "capacitor", ...part });

describe("the type of a part", () => {
  test.each<Row>([
    ["470K 1/2W", { value: 470_000, watts: 0.5 }, 1948, "carbon_comp", "likely"],
    ["470K 1/2W carbon", { construction: "composition" }, 1948, "carbon_comp", "sure"],
    ["470K 1/2W", { value: 470_000 }, 1970, "carbon_comp", "a guess"],
    ["2,500 ohm 7 W", { watts: 7 }, null, "wirewound", "likely"],
    ["10 ohm wire wound", {}, null, "wirewound", "sure"],
    ["990K 1%", { value: 990_000, tolerance: { minus: 0.01, plus: 0.01 } }, 1953, "carbon_film_old", "likely"],
    ["7.5 ohm fusible 5 W", { watts: 5 }, null, "fusible", "sure"],
    ["metal clad 5000-1500-250", {}, 1936, "strip_ww", "likely"],
    ["25 W metal clad", { watts: 25 }, null, "metal_clad_ww", "likely"],
    ["250 ohm 1 W output cathode", { watts: 1 }, null, "cathode_r", "likely"],
    ["22K 5 W bleeder", { watts: 5 }, null, "bleeder", "sure"],
    ["focus divider 10 meg", {}, null, "hv_divider", "likely"],
    ["ballast tube", { kind: "tube" }, null, "ballast", "sure"],
    ["line cord 220 ohms", { value: 220 }, null, "line_cord_r", "sure"],
    ["inrush", { kind: "thermistor" }, null, "thermistor", "sure"],
    ["triode network", { kind: "network" }, null, "printed_rc", "sure"],
    [".05 mf 400V", cap({ value: 5e-8, volts: 400 }), 1948, "paper_wax", "likely"],
    [".05 mf 400V", cap({ value: 5e-8, volts: 400 }), 1964, "film_old", "a guess"],
    [".05 mf 400V moulded tubular", cap({ value: 5e-8 }), 1952, "paper_moulded", "sure"],
    [".05 wax paper", cap({ value: 5e-8, dielectric: "paper" }), null, "paper_wax", "sure"],
    ["3 x .1 bathtub", cap({ dielectric: "paper" }), null, "paper_bathtub", "sure"],
    ["condenser block", cap({ value: 1e-6 }), null, "paper_block", "sure"],
    ["250 mmf mica", cap({ value: 2.5e-10, dielectric: "mica" }), 1940, "mica_foil", "sure"],
    ["250 mmf", cap({ value: 2.5e-10 }), 1940, "mica_foil", "likely"],
    ["250 mmf", cap({ value: 2.5e-10 }), null, "mica_foil", "a guess"],
    ["100 mmf silver mica", cap({ dielectric: "silver-mica" }), null, "mica_silver", "sure"],
    [".005 disc", cap({ value: 5e-9, dielectric: "ceramic" }), null, "ceramic_disc", "likely"],
    ["47 mmf N750", cap({ dielectric: "ceramic", temperatureCoefficient: "N750" }), null, "ceramic_tc", "sure"],
    ["1000 mmf feed-thru", cap({ dielectric: "ceramic" }), null, "ceramic_feedthrough", "sure"],
    ["500 mmf doorknob 20 kV", cap({ dielectric: "ceramic", volts: 20_000 }), null, "ceramic_hv", "sure"],
    [".1 mylar", cap({ dielectric: "polyester" }), null, "film_old", "sure"],
    ["16 mf 450V", cap({ value: 1.6e-5, volts: 450 }), null, "elec_single", "likely"],
    ["16 mf 450V dry electrolytic", cap({ dielectric: "electrolytic", volts: 450 }), null, "elec_single", "sure"],
    [
      "20-20 mf",
      cap({
        dielectric: "electrolytic",
        sections: [
          { suffix: "A", farads: 2e-5, volts: 150 },
          { suffix: "B", farads: 2e-5, volts: 150 },
        ],
      }),
      null,
      "elec_multi",
      "sure",
    ],
    ["20 mf 25V", cap({ value: 2e-5, volts: 25 }), null, "elec_bias", "likely"],
    ["8 mf insulated can", cap({ dielectric: "electrolytic" }), null, "elec_can_insulated", "sure"],
    ["4 mf non-polar", cap({ dielectric: "electrolytic" }), null, "elec_nonpolar", "sure"],
    ["10 mf 20V", cap({ dielectric: "tantalum" }), null, "tantalum", "sure"],
    ["2 mf 1000V oil", cap({ dielectric: "oil" }), null, "oil", "sure"],
    ["padder 300-600 mmf", cap({ valueState: "range", valueMin: 3e-10, valueMax: 6e-10 }), null, "trimmer", "sure"],
    ["2 gang tuning", cap({}), null, "air_variable", "sure"],
    ["75 ma selenium", { kind: "rectifier" }, 1953, "selenium", "sure"],
    ["100 ma", { kind: "rectifier" }, 1953, "selenium", "likely"],
    ["silicon 500 ma", { kind: "rectifier" }, 1958, "silicon_rectifier", "sure"],
    ["crystal diode", { kind: "rectifier" }, null, "germanium_diode", "sure"],
    ["copper oxide meter rectifier", { kind: "rectifier" }, null, "copper_oxide", "sure"],
    ["5Y3GT", { kind: "tube" }, null, "tube_rectifier", "likely"],
    ["6SN7", { kind: "tube" }, null, "tube", "sure"],
    ["500K volume, tapped", { kind: "potentiometer" }, null, "pot", "sure"],
    ["power switch on volume control", { kind: "switch" }, null, "pot_switch", "likely"],
    ["1.6A slow", { kind: "fuse" }, null, "fuse", "sure"],
    ["No. 47", { kind: "lamp" }, null, "lamp", "sure"],
    ["neon, 1/25 W", { kind: "lamp" }, null, "neon", "sure"],
    ["vibrator, 6 V", { kind: "other" }, null, "vibrator", "sure"],
    ["output transformer", { kind: "transformer" }, null, "transformer", "sure"],
    ["2N107", { kind: "other" }, null, "transistor", "sure"],
    ["line cord and plug", { kind: "other" }, null, "cord_plug", "sure"],
    ["knob", { kind: "other" }, null, "unknown", "sure"],
  ])('"%s" is recognised', (printed, part, era, id, sure) => {
    expect(classOf(listed({ printed, ...part }), era)).toMatchObject({ id, sure });
  });
});

describe("the use of a part", () => {
  test.each<[string, ListedPart["kind"], string | null]>([
    ["plate load", "resistor", "plate_load"],
    ["screen dropping", "resistor", "screen_drop"],
    ["screen bypass", "capacitor", "screen_bypass"],
    ["audio coupling", "capacitor", "coupling_grid"],
    ["AVC bypass", "capacitor", "avc"],
    ["1st filter", "capacitor", "first_filter"],
    ["output filter", "capacitor", "later_filter"],
    ["filter", "capacitor", null],
    ["cathode bypass", "capacitor", "cathode_bypass"],
    ["across line", "capacitor", "across_line"],
    ["line to chassis", "capacitor", "line_to_chassis"],
    ["line bypass", "capacitor", "line_to_chassis"],
    ["B- to chassis", "capacitor", "float_ground"],
    ["antenna isolation", "capacitor", "antenna_isolation"],
    ["osc. padder", "capacitor", "oscillator"],
    ["grid leak", "resistor", "grid_leak"],
    ["grid stopper", "resistor", "grid_stop"],
    ["heater dropping", "resistor", "heater_drop"],
    ["surge limiting", "resistor", "b_plus_drop"],
    ["negative feedback", "resistor", "feedback"],
    ["meter multiplier", "resistor", "meter"],
    ["bleeder", "resistor", "bleeder"],
    ["focus", "resistor", "focus_hv"],
    ["yoke damping", "capacitor", "boost"],
    ["vibrator buffer", "capacitor", "buffer"],
    ["fixed bias filter", "capacitor", "bias_supply"],
    ["sweep generator", "capacitor", "timing"],
    ["horizontal output", "resistor", "pulse"],
    ["tone control", "capacitor", "tone"],
    ["output plate", "capacitor", "output_plate"],
    ["I.F. trap", "capacitor", "tuned"],
    ["", "resistor", null],
  ])('"%s" on a %s is %s', (use, kind, id) => {
    expect(roleOf(listed({ use, kind }))?.id ?? null).toBe(id);
  });

  test("a line bypass is taken for the stricter place, and says that it guesses", () => {
    expect(roleOf(listed({ use: "line bypass", kind: "capacitor" }))).toMatchObject({ sure: "a guess" });
  });
});
