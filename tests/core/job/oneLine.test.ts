import { describe, expect, test } from "vitest";
import {
  DEFAULTS_IN_FORCE,
  type Evidence,
  leadingReasons,
  oneLine,
  stagesOfPart,
  UNKNOWN_PLACE,
} from "../../../src/core/index.js";
import { partOf } from "../rate/partOf.js";

const lifted = (value: number): Evidence["readings"] => [
  { quantity: "resistance", value, inPlace: false, accuracy: 0.01 },
];
const drifted = stagesOfPart(
  partOf("carbon_comp", "plate_load", { designators: ["R7"], value: 470e3, watts: 0.5 }),
  DEFAULTS_IN_FORCE,
  { readings: lifted(612e3), place: { ...UNKNOWN_PLACE, volts: 250 } },
);

describe("one line that a restorer would write", () => {
  test("what it was, what was read, what is done, what takes its place, and the limit that decided it", () => {
    expect(oneLine(drifted)).toBe(
      "R7 470 k 1/2 W carbon composition resistor, plate load: reads 612 k, +30 %, replace; 470 k ±5 % 1 W metal film, 350 V body, because 250 V would be all of a 1/2 W body's limit",
    );
  });

  test("leads with the two reasons that decided, whatever their wording", () => {
    expect(leadingReasons(drifted)).toEqual(["reads 612 k, +30 %: bad", "250 V would be all of a 1/2 W body's limit"]);
  });

  test.each<[string, string | null, object, Evidence, RegExp]>([
    ["carbon_comp", null, { value: 1e5 }, { readings: lifted(101e3) }, /reads 101 k, \+1 %, keep$/],
    ["paper_wax", "line_to_chassis", { value: 1e-8 }, {}, /a short makes the chassis live, replace; 0.01 µF/],
    [
      "lamp",
      null,
      { printed: "No. 47" },
      { findings: [{ text: "burnt out", bad: true }] },
      /burnt out, replace; type 47/,
    ],
    ["selenium", null, {}, {}, /replace; silicon 1000 V, 68 Ω 5 W in series, because/],
    ["transformer", null, {}, {}, /check$/],
    ["unknown", null, {}, {}, /what it is decides everything else, ask$/],
  ])("of a %s as %s", (className, role, stated, evidence, line) => {
    expect(oneLine(stagesOfPart(partOf(className, role, stated), DEFAULTS_IN_FORCE, evidence))).toMatch(line);
  });

  test("a passing part that goes on sight says both", () => {
    const insulation = { quantity: "insulation", value: 400e6, inPlace: false, accuracy: null } as const;
    const line = oneLine(
      stagesOfPart(partOf("paper_wax", null, { value: 1e-7 }), DEFAULTS_IN_FORCE, { readings: [insulation] }),
    );
    expect(line).toMatch(/reads insulation 400 M, but "replace the known bad" spares none of its type, replace;/);
  });

  test("what is split names each new part", () => {
    const whole = stagesOfPart(partOf("elec_multi", null, {}), DEFAULTS_IN_FORCE);
    const sections = [2e-5, 4e-5].map((value) =>
      stagesOfPart(partOf("elec_multi", null, { value, volts: 450 }), DEFAULTS_IN_FORCE),
    );
    expect(oneLine(whole, sections)).toMatch(/replace; 22 µF .* 450 V; 47 µF .* 450 V$/);
  });
});
