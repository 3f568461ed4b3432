import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { ListedPart, Place } from "../../../src/core/index.js";
import { partOf, rate } from "./partOf.js";

type Row = readonly [
  why: string,
  className: string,
  role: string | null,
  stated: Partial<ListedPart>,
  place: Partial<Place>,
  text: string,
  watts: number | null,
  volts: number | null,
  technology: string,
];

/** Common practice where no source is named. */
const AIMS: readonly Row[] = [
  ["half a watt becomes one", "carbon_comp", null, { value: 47e3, watts: 0.5 }, {}, "47 k", 1, 350, "metal_film"],
  ["one watt becomes two", "carbon_comp", null, { value: 47e3, watts: 1 }, {}, "47 k", 2, 500, "metal_film"],
  [
    "two become three: 4 W is not made",
    "carbon_comp",
    null,
    { value: 10e3, watts: 2 },
    {},
    "10 k",
    3,
    350,
    "metal_oxide",
  ],
  [
    "a known loss at half load",
    "carbon_comp",
    null,
    { value: 10e3, watts: 0.5 },
    { volts: 60 },
    "10 k",
    1,
    350,
    "metal_film",
  ],
  ["volts before watts", "carbon_comp", "plate_load", { value: 470e3 }, { volts: 250 }, "470 k", 1, 350, "metal_film"],
  [
    "4.7 M at 900 V: three share it",
    "bleeder",
    "bleeder",
    { value: 4.7e6, watts: 1 },
    { volts: 900 },
    "1.6 M + 1.6 M + 1.6 M",
    2,
    500,
    "metal_film",
  ],
  [
    "7 W wirewound becomes 10 W",
    "wirewound",
    "b_plus_drop",
    { value: 2500, watts: 7 },
    {},
    "2.5 k",
    10,
    null,
    "wirewound",
  ],
  [
    "25 W of wire is never doubled",
    "wirewound",
    "b_plus_drop",
    { value: 2500, watts: 25 },
    {},
    "2.5 k",
    25,
    null,
    "wirewound",
  ],
  ["5 ohms of wire may be a fuse", "wirewound", null, { value: 5.1, watts: 5 }, {}, "5.1 Ω", 5, null, "wirewound"],
  [
    "a fusible part keeps its watts",
    "fusible",
    "b_plus_drop",
    { value: 7.5, watts: 5 },
    {},
    "7.5 Ω",
    5,
    null,
    "fusible",
  ],
  [
    ".05 is .047 and 400 V stock is 630",
    "paper_wax",
    "avc",
    { value: 5e-8, volts: 400 },
    {},
    "0.047 µF",
    null,
    630,
    "polyester",
  ],
  [
    "1,000 V paper needs its volts",
    "paper_wax",
    null,
    { value: 1e-8, volts: 1000 },
    {},
    "0.01 µF",
    null,
    1000,
    "polyester",
  ],
  ["moulded .25 is .22 or .27 in E12", "paper_moulded", null, { value: 2.5e-7 }, {}, "0.27 µF", null, 630, "polyester"],
  ["8 becomes 10", "elec_single", "later_filter", { value: 8e-6, volts: 450 }, {}, "10 µF", null, 450, "alu_axial"],
  [
    "20 at 350 V with a peak of 375",
    "elec_single",
    "later_filter",
    { value: 2e-5, volts: 350 },
    { warmUpVolts: 375 },
    "22 µF",
    null,
    400,
    "alu_axial",
  ],
  [
    "the rectifier's limit wins",
    "elec_single",
    "first_filter",
    { value: 1.6e-5, volts: 450 },
    { rectifierFarads: 2e-5 },
    "18 µF",
    null,
    450,
    "alu_axial",
  ],
  [
    "a cathode bypass is bought at 50 V",
    "elec_bias",
    "cathode_bypass",
    { value: 1e-5, volts: 25 },
    {},
    "10 µF",
    null,
    50,
    "alu_axial",
  ],
  [
    "a tantalum takes twice its volts",
    "tantalum",
    null,
    { value: 1e-5, volts: 20 },
    { volts: 15 },
    "10 µF",
    null,
    35,
    "tantalum",
  ],
  [
    "a buffer is made up",
    "paper_wax",
    "buffer",
    { value: 7.5e-9, volts: 1600, tolerance: { minus: 0.1, plus: 0.1 } },
    {},
    "0.0047 µF || 0.0027 µF",
    null,
    2000,
    "pp_film_foil",
  ],
  [
    "the output plate kicks",
    "paper_wax",
    "output_plate",
    { value: 5e-9, volts: 600 },
    {},
    "0.0047 µF",
    null,
    1000,
    "pp_film_foil",
  ],
  ["boost wants 1,600 V", "paper_wax", "boost", { value: 1e-7, volts: 600 }, {}, "0.1 µF", null, 1600, "pp_film_foil"],
  [
    "line to chassis: class Y",
    "paper_wax",
    "line_to_chassis",
    { value: 1e-8, volts: 400 },
    {},
    "0.01 µF",
    null,
    250,
    "y_class",
  ],
  [
    "across the line: class X",
    "paper_wax",
    "across_line",
    { value: 1e-7, volts: 400 },
    {},
    "0.1 µF",
    null,
    275,
    "x_class",
  ],
  [
    "a coded ceramic stays exact",
    "ceramic_tc",
    "oscillator",
    { value: 4.7e-11, temperatureCoefficient: "N750" },
    {},
    "47 pF",
    null,
    500,
    "same",
  ],
  ["a 500 k control is 500 k", "pot", null, { value: 5e5 }, {}, "500 k", null, null, "same"],
  [
    "an old 250 ohm cathode resistor",
    "cathode_r",
    null,
    { value: 250, watts: 1 },
    { amps: 0.045 },
    "250 Ω",
    2,
    null,
    "wirewound",
  ],
];

describe("the part aimed at", () => {
  test.each(AIMS)("%s: a %s used as %s", (_why, className, role, stated, place, text, watts, volts, technology) => {
    const { aim } = rate(partOf(className, role, stated), place);
    expect(aim?.text).toBe(text);
    expect(aim?.pieces[0]).toMatchObject({ watts, volts, technology });
  });

  test("a warm-up peak no single part survives becomes a pair in series with balancing resistors", () => {
    // 350 V a half winding, made for 117 V, on 123 V: 1.414 x 350 x 123 / 117 = 520 V; 20 % parts: 60 % on the smaller.
    const can = partOf("elec_single", "later_filter", { value: 30e-6, volts: 450 });
    const ratings = rate(can, { windingVolts: 350 });
    expect(ratings.aim?.text).toBe("68 µF + 68 µF");
    expect(ratings.aim?.pieces.slice(0, 2).map(({ volts }) => volts)).toEqual([315, 315]);
    expect(ratings.aim?.pieces.slice(2).every(({ kind, value }) => kind === "resistor" && value !== null)).toBe(true);
    expect(ratings.because.join(" ")).toMatch(/520.4 V/);
  });

  test("selenium becomes silicon and a resistor to start from", () => {
    // 5 plates at 1 V less 0.7 V over 65 mA = 66 ohms; (2 x 0.065)^2 x 68 = 1.15 W, 3 W at half load, 5 W a step up.
    const { aim, figures } = rate(partOf("selenium", null), { plates: 5, loadAmps: 0.065 });
    expect(aim?.pieces).toMatchObject([
      { technology: "silicon", volts: 1000 },
      { kind: "resistor", value: 68, watts: 5 },
    ]);
    expect(figures?.lostWatts).toBeCloseTo(1.149, 3);
  });

  test("a resistance cord offers four schools and leaves the choice", () => {
    // 117 V less 68.9 V at 0.3 A is 160 ohms, 14.4 W: common practice for a string of 300 mA tubes.
    const ratings = rate(partOf("line_cord_r", "heater_drop"), { stringVolts: 68.9, amps: 0.3 }, { line_now_V: 117 });
    expect(ratings.aim).toBeNull();
    expect(ratings.choices).toHaveLength(4);
    expect(ratings.choices?.[0]).toMatch(/160 Ω 50 W/);
  });

  test("from line to chassis more than the figure to look at is asked, with the currents", () => {
    const ratings = rate(partOf("paper_wax", "line_to_chassis", { value: 5e-8 }));
    expect(ratings.aim).toBeNull();
    expect(ratings.choices).toEqual(["0.01 µF class Y, 0.464 mA", "0.0047 µF class Y, 0.218 mA"]);
  });

  test("a fuse keeps amperes and speed, and its volts break today's line", () => {
    const ratings = rate(partOf("fuse", null, { printed: "F1 1.6A slow 125V", volts: 125 }));
    expect(ratings.aim).toMatchObject({ text: "1.6 A slow, 250 V", pieces: [{ value: 1.6, volts: 250 }] });
    expect(ratings.rejected.map(({ what }) => what)).toEqual(["2 A slow", "1.6 A fast", "wire or foil"]);
  });

  test("a dial lamp is its type number, and another current is turned down", () => {
    const ratings = rate(partOf("lamp", null, { printed: "No. 47" }));
    expect(ratings.aim?.text).toMatch(/^type 47: 6-8 V 0.15 A/);
    expect(ratings.rejected.map(({ what }) => what)).toContain("type 44");
  });

  test("wire that would need to be doubled for half load is met a step up, and says how hard it works", () => {
    // 0.3 A through 150 ohms is 13.5 W; half load asks for 27 W, 50 W is made; 25 W runs at 54 %.
    const ratings = rate(partOf("wirewound", "heater_drop", { value: 150, watts: 20 }), { amps: 0.3 });
    expect(ratings.aim?.pieces[0]?.watts).toBe(25);
    expect(ratings.because).toContain("wire is never doubled: 25 W, at 54 % load");
  });

  test("a shunt of 1 % is made up exactly where no value keeps within its mark", () => {
    const tolerance = { minus: 0.01, plus: 0.01 };
    const { aim } = rate(partOf("carbon_comp", "meter", { value: 5.05, tolerance }));
    expect(aim?.pieces.map(({ value }) => value)).toEqual([3.09, 1.96]);
  });

  test("a pair for the warm-up peak stays under the rectifier's limit even where that is below nominal", () => {
    const part = partOf("elec_single", "first_filter", { value: 40e-6, volts: 450 });
    const { aim } = rate(part, { windingVolts: 350, rectifierFarads: 40e-6 });
    expect(aim?.text).toBe("68 µF + 68 µF");
  });

  test("a fuse's fraction is not mixed up with its number", () => {
    expect(rate(partOf("fuse", null, { printed: "F2 1/4 A" })).aim?.text).toBe("0.25 A, 250 V");
    expect(rate(partOf("fuse", null, { printed: "F2 1 1/2 amp slo" })).aim?.text).toBe("1.5 A slow, 250 V");
  });

  test.each<[string, Partial<ListedPart>, string, number]>([
    // Rule row printed_rc: series E96, 20 %; film from 0.001 µF up, mica or ceramic below (common practice).
    ["249 k is in E96", { kind: "resistor", value: 250e3 }, "249 k", 200],
    ["499 k is in E96", { kind: "resistor", value: 500e3 }, "499 k", 200],
    [".005 is film of 630 V", { kind: "capacitor", value: 5e-9 }, "0.0047 µF", 630],
    ["250 mmf is mica or ceramic of 500 V", { kind: "capacitor", value: 2.5e-10 }, "240 pF", 500],
  ])("a piece of a printed network is a discrete part: %s", (_why, piece, text, volts) => {
    const { aim, because } = rate(partOf("printed_rc", null, piece), { volts: 130 });
    expect(aim).toMatchObject({ text, pieces: [{ volts }] });
    expect(because.at(-1)).toMatch(/does not say between which pins/);
  });

  test("a value in the window that sticks out of the old limits says by how much", () => {
    const ratings = rate(partOf("elec_single", "later_filter", { value: 2e-5, volts: 350 }));
    expect(ratings.because.join(" ")).toMatch(/leaves the old one .* by 2.2 %/);
  });

  test("only values that are in stock are weighed when the stock is given", () => {
    const ratings = rate(
      partOf("elec_single", "first_filter", { value: 16e-6, volts: 450 }),
      {},
      {},
      [10e-6, 6.8e-6, 22e-6],
    );
    expect(ratings.aim?.text).toBe("10 µF || 6.8 µF");
  });
});

describe("laws of rating", () => {
  const filter = (volts: number) => partOf("elec_single", "first_filter", { value: 20e-6, volts });
  const volts = (of: ReturnType<typeof rate>) => of.leastVolts ?? 0;

  test("raising the line voltage never lowers a voltage rating", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 90, max: 250 }),
        fc.integer({ min: 0, max: 20 }),
        fc.integer({ min: 100, max: 400 }),
        (line, more, winding) => {
          for (const part of [
            filter(450),
            partOf("paper_wax", "line_to_chassis", { value: 1e-8 }),
            partOf("fuse", null, { printed: "1 A" }),
          ]) {
            const low = rate(part, { windingVolts: winding }, { line_now_V: line });
            const high = rate(part, { windingVolts: winding }, { line_now_V: line + more });
            expect(volts(high)).toBeGreaterThanOrEqual(volts(low));
          }
        },
      ),
    );
  });

  test("what is aimed at meets the ratings", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 10_000_000 }),
        fc.constantFrom(0.25, 0.5, 1, 2),
        fc.integer({ min: 0, max: 400 }),
        (ohms, watts, across) => {
          const ratings = rate(
            partOf("carbon_comp", null, { value: ohms, watts }),
            across > 0 && across ** 2 / ohms < 20 ? { volts: across } : {},
          );
          const [piece, second] = ratings.aim?.pieces ?? [];
          if (!piece || second) return;
          expect(piece.watts).toBeGreaterThanOrEqual(ratings.leastWatts ?? 0);
          if (piece.volts !== null) expect(piece.volts).toBeGreaterThanOrEqual((ratings.leastVolts ?? 0) * (1 - 1e-9));
          expect(piece.value).toBeGreaterThanOrEqual(ratings.window!.min * (1 - 1e-9));
          expect(piece.value).toBeLessThanOrEqual(ratings.window!.max * (1 + 1e-9));
        },
      ),
    );
  });
});
