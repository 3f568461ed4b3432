import fc from "fast-check";
import { beforeAll, describe, expect, test } from "vitest";
import { DIAL_LAMPS, defaultRules } from "../../src/core/index.js";
import { catalogue } from "../../src/start/reference/catalogue.js";
import { TYPES, USES } from "../core/job/anyPart.js";
import { provideCustomFunctions } from "./customFunctions.js";
import { loadFunctions } from "./loadFunctions.js";

let call: Awaited<ReturnType<typeof loadFunctions>>;
beforeAll(async () => {
  provideCustomFunctions();
  call = await loadFunctions(await catalogue());
});

/** What a function gives for single values. */
const LUG = (id: string, ...given: readonly unknown[]) => call.get(id)!(...given.map((cell) => [[cell]]));

const anyType = fc.constantFrom(...TYPES);
const anyUse = fc.constantFrom(...USES);
const labelOf = (id: string) => defaultRules().find((rule) => rule.id === id && rule.scope === "class")!.label;

describe("PART_TYPE", () => {
  test.each([
    // line, year, type, why (common practice: rules of thumb of value, colours of bodies, maker's words)
    ["R7 470K 1/2W", 1948, "Carbon composition resistor", "what a plain resistor of those years is"],
    ["R8 2500 ohms 10W wirewound", 1948, "Wirewound, vitreous or cement", "the list says so"],
    ["C5 .05 mf 400V", 1948, "Wax paper tubular", "0.001 to 1 µF is paper"],
    ["C6 20 mf 450V electrolytic", 1948, "Electrolytic, single", "the list says so"],
    ["C7 250 mmf mica", 1948, "Moulded mica (stacked foil)", "the list says so"],
  ])("%s of %d is a %s: %s", (line, year, type) => {
    expect(LUG("PART_TYPE", line, year)[0]![0]).toBe(type);
  });

  test("gives a type that the other functions take, and says how sure it is", () => {
    const line = fc.constantFrom(
      "R1 470K",
      "C1 .1 mf",
      "C2 100 mmf",
      "L1 choke",
      "T1 power transformer",
      "M1 thing",
      "F1 3A",
    );
    fc.assert(
      fc.property(line, fc.integer({ min: 1925, max: 1975 }), (listed, year) => {
        const [[type, sure] = []] = LUG("PART_TYPE", listed, year);
        expect(["sure", "likely", "a guess"]).toContain(sure);
        expect(LUG("RULE_FOR", type)[0]![0]).toBe("action");
      }),
    );
  });
});

describe("RULE_FOR", () => {
  const technology = (type: string, use: string) => LUG("RULE_FOR", type, use)[2]![1];
  const capacitors = defaultRules().filter(({ scope, kind }) => scope === "class" && kind === "capacitor");

  // IEC 60384-14: across the line only class X (or Y) parts, from the line to what a hand may touch only class Y.
  test.each(capacitors.map(({ id }) => id))("a %s at the line becomes a part of class X or Y", (type) => {
    expect(technology(type, "across_line")).toMatch(/class X/);
    expect(technology(type, "line_to_chassis")).toMatch(/class Y/);
  });

  test("says the same by id and by label, and names the row that decided", () => {
    fc.assert(
      fc.property(anyType, anyUse, (type, use) => {
        const rows = LUG("RULE_FOR", type, use);
        expect(LUG("RULE_FOR", labelOf(type), use)).toEqual(rows);
        expect(String(rows[0]![2])).toMatch(/^(type|use) /);
      }),
    );
  });
});

describe("CAUTIONS", () => {
  const LEVELS = ["stop", "look", "note"];

  test("stops stand first, and nothing is said twice, for any type in any use", () => {
    fc.assert(
      fc.property(anyType, anyUse, (type, use) => {
        const rows = LUG("CAUTIONS", type, use).filter(([level]) => level !== "");
        const levels = rows.map(([level]) => LEVELS.indexOf(String(level)));
        expect(levels).toEqual([...levels].sort());
        expect(new Set(rows.map(([, text]) => text)).size).toBe(rows.length);
      }),
    );
  });

  // IEC 60384-14, as above: the stop says which class it has to be.
  test.each([
    ["across_line", /^Only a class X/],
    ["line_to_chassis", /^Only a class Y/],
    ["antenna_isolation", /^Only a class Y/],
  ])("a place such as %s stops with %s", (use, text) => {
    const stops = LUG("CAUTIONS", "paper_wax", use).filter(([level]) => level === "stop");
    expect(stops.map(([, says]) => String(says)).some((says) => text.test(says))).toBe(true);
  });
});

describe("UNSTATED", () => {
  test.each([
    // type, figure, value, source
    ["carbon_comp", "tolerance", "±20 %", "IEC 60062: no tolerance band is 20 %"],
    ["carbon_comp", "watts", 0.5, "common practice for lists of the 1940s to 60s"],
    ["elec_single", "tolerance", "-10/+50 %", "old electrolytics up to 450 V, from memory"],
  ])("of a %s, %s is %s (%s)", (type, figure, value, _source) => {
    expect(String(LUG("UNSTATED", type, figure)[0]![0]).replace("−", "-")).toBe(String(value));
  });

  test("an edited rule is what it says", () => {
    fc.assert(
      fc.property(anyType, fc.constantFrom(0.25, 0.5, 2), (type, watts) => {
        const rules = `class ${type}: unstated watts = ${watts}`;
        expect(LUG("UNSTATED", type, "watts", rules)).toEqual([[watts]]);
      }),
    );
  });
});

describe("LAMP", () => {
  // Published handbook tables of dial lamps, from memory.
  test.each([
    [47, 0.15, "brown", "bayonet"],
    [44, 0.25, "blue", "bayonet"],
    [46, 0.25, "blue", "screw"],
    [40, 0.15, "brown", "screw"],
    [51, 0.2, "white", "bayonet"],
    [49, 0.06, "pink", "bayonet"],
  ])("type %d takes %d A, has a %s bead and a %s base", (type, amps, bead, base) => {
    const found = LUG("LAMP", type).flat();
    expect(found).toEqual(expect.arrayContaining([amps, bead, base]));
  });

  test("lamps of one bead and volts take one current: by the bead a lamp without its number is known", () => {
    for (const one of DIAL_LAMPS)
      for (const other of DIAL_LAMPS.filter(({ bead, volts }) => bead === one.bead && volts === one.volts))
        if (one.bead !== "white") expect(other.amps).toBe(one.amps);
  });
});

describe("CODE_DECODE", () => {
  const E24 = [10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91];
  const value = fc.tuple(fc.constantFrom(...E24), fc.integer({ min: 0, max: 4 }));
  /** Letters of IEC 60062 that are no prefix too: 100K on a resistor is 100 k, not 10 ohms of 10 %, and G is a thousand million. */
  const KINDS = [
    ["resistor", 1, [0.01, 0.05]],
    ["capacitor", 1e-12, [0.01, 0.02, 0.05, 0.1, 0.2]],
  ] as const;

  test.each(KINDS)(
    "of a %s reads back what CODE_ENCODE writes, for every value of E24 in IEC 60063",
    (kind, unit, all) => {
      fc.assert(
        fc.property(value, fc.constantFrom(...all), ([step, decade], tolerance) => {
          const amount = Number((step * 10 ** decade * unit).toPrecision(3));
          const [[mark]] = LUG("CODE_ENCODE", amount, kind, tolerance) as [[string]];
          const [read, span] = LUG("CODE_DECODE", mark, kind)[0]!;
          expect(Number(read) / amount).toBeCloseTo(1, 9);
          expect(span).toBe(`±${Math.round(tolerance * 100)} %`);
        }),
      );
    },
  );
});
