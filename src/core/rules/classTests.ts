/** TABLE: what to read or look at on each class of part, under what condition, and the limit. */

/** One test of a class: what is read, under what condition, its limit in words, and what a reading in place can say. */
export type ClassTest = {
  readonly quantity: string;
  readonly condition: string;
  readonly limit: string;
  readonly inPlace: string;
};

const test = (quantity: string, condition: string, limit: string, inPlace: string): ClassTest => ({
  quantity,
  condition,
  limit,
  inPlace,
});

/** Tests by class, the telling one first. Source: as the class's row. */
export const CLASS_TESTS: Readonly<Record<string, readonly ClassTest[]>> = {
  carbon_comp: [
    test(
      "resistance",
      "power off, filters discharged, cool",
      "drift within the marked tolerance or 20 %, whichever is wider",
      "high convicts; low or in range says nothing",
    ),
  ],
  carbon_film_old: [
    test("resistance", "power off, filters discharged, cool", "marked tolerance (1, 2, 5 %)", "high convicts"),
  ],
  wirewound: [
    test(
      "resistance",
      "cold",
      "within 10 % and not erratic when tapped",
      "high convicts; low may be shorted turns: lift",
    ),
    test("insulation", "to mounting hardware, 500 V", ">= 10 MΩ", "high acquits"),
  ],
  strip_ww: [
    test("resistance per section", "cold", "within 10 %", "lift the taps"),
    test("insulation", "element to case, 500 V", ">= 10 MΩ", "high acquits"),
  ],
  metal_clad_ww: [
    test("resistance", "cold", "within 10 %", "high convicts"),
    test("insulation", "to chassis 500 V", ">= 10 MΩ", "high acquits"),
  ],
  cathode_r: [test("resistance", "cold", "within 10 %", "low says nothing; bypass capacitor may shunt it")],
  bleeder: [test("resistance", "cold", "within 10 %", "high convicts")],
  hv_divider: [
    test("resistance", "lifted", "within 5-10 %", "lift"),
    test("balance", "each of a string", "all within 5 % of each other", "lift"),
  ],
  fusible: [test("resistance", "cold", "within marked tolerance (10 % if unmarked)", "high convicts")],
  ballast: [test("resistance per section", "cold", "compare with the type code or heater sum", "lift (unplug)")],
  thermistor: [
    test("cold resistance", "25 °C", "within 20 % of documented", "high convicts"),
    test("hot volts", "after 5 min", "drop near documented", "powered"),
  ],
  line_cord_r: [test("continuity", "unplugged", "replace in any case", "lift")],
  printed_rc: [test("each element", "per diagram pins", "marked tolerance", "lift (pins shared)")],
  paper_wax: [
    test(
      "insulation",
      "at rated volts, one lead lifted",
      "200 MΩ feeding a grid or AVC, 50 MΩ as a bypass",
      "lift; a handheld meter at 3-9 V proves nothing",
    ),
    test("capacitance", "lifted", "+-20 % (leaky ones read high)", "low convicts"),
  ],
  paper_moulded: [
    test("insulation", "at working volts, lifted", "leakage < 3 µA as wide limit; grid rule is stricter", "lift"),
  ],
  paper_bathtub: [
    test(
      "insulation",
      "rated volts, each section and to case",
      "200 MΩ feeding a grid or AVC, 50 MΩ as a bypass; to the case 200 MΩ",
      "lift",
    ),
    test("capacitance", "lifted", "+-20 %", "low convicts"),
  ],
  paper_block: [test("insulation", "rated volts", "by role", "lift")],
  mica_foil: [
    test("capacitance, Q", "lifted", "+-marked; Q not low", "high C in circuit says nothing"),
    test("leakage", "rated volts where it blocks B+", "none measurable (> 1 GΩ)", "lift"),
  ],
  mica_silver: [
    test("behaviour", "powered", "crackle, drifting sensitivity, IF peak missing", "powered"),
    test("capacitance/DF", "lifted", "+-5 %, DF < 0.002", "lift"),
  ],
  ceramic_disc: [
    test("capacitance", "lifted", "-20/+80 % or marked", "low convicts"),
    test("insulation", "rated volts", "> 1 GΩ", "lift"),
  ],
  ceramic_tc: [test("capacitance", "lifted", "marked", "lift")],
  ceramic_feedthrough: [test("insulation", "rated volts", "> 1 GΩ", "lift")],
  ceramic_hv: [
    test("look", "set dead and discharged", "no crack, no track, no burnt spot", "look"),
    test("insulation", "rated volts where that can be had", "> 1 GΩ", "lift"),
  ],
  film_old: [
    test("insulation", "rated volts", "> 1 GΩ", "lift"),
    test("capacitance", "lifted", "marked", "low convicts"),
  ],
  elec_single: [
    test(
      "leakage",
      "rated volts, after reform, 5-10 min",
      "mA up to K x µF + 0.3; K 0.01 up to 100 V, 0.02 to 250, 0.025 to 350, 0.04 to 500",
      "lift",
    ),
    test("ESR", "100 Hz-1 kHz", "below table or 2 x new", "high convicts"),
    test("capacitance", "lifted", ">= -20 % of nominal", "low convicts"),
  ],
  elec_multi: [test("each section", "as single", "as single", "lift")],
  elec_can_insulated: [test("can to chassis", "power off", "documented potential", "lift")],
  elec_nonpolar: [
    test("capacitance", "lifted", "+-20 %", "low convicts"),
    test("ESR", "1 kHz", "< 2 x new", "high convicts"),
  ],
  elec_bias: [test("ESR", "100 Hz-1 kHz", "low", "high convicts")],
  tantalum: [
    test("leakage", "rated volts, lifted, polarity kept", "about 0.01 µA per µF x V, 1 µA least", "lift"),
    test("case", "look", "no crust at the seal", "look"),
  ],
  oil: [
    test("insulation", "rated volts", "> 1000 MΩ x µF or by role", "lift"),
    test("case", "look", "no seep, no swelling", "look"),
  ],
  trimmer: [test("short", "over the turn", "none; smooth", "lift")],
  air_variable: [test("short", "over the turn", "none", "lift")],
  selenium: [
    test("B+", "powered through lamp limiter", "< 90 % of documented = weak", "powered"),
    test("heat, smell", "powered", "none", "powered"),
  ],
  silicon_rectifier: [test("forward drop, reverse", "diode range, lifted", "0.4-0.7 V; open in reverse", "lift")],
  copper_oxide: [test("calibration", "known ac", "within meter class", "powered")],
  tube_rectifier: [test("emission", "tester or B+ under load", "as documented", "powered")],
  germanium_diode: [
    test("forward drop", "about 1 mA", "0.2-0.4 V", "lift"),
    test("reverse resistance", "rated or 10 V", "> 50-100 kΩ; pair match 10 %", "lift"),
  ],
  pot: [
    test("end to end", "lifted", "+-20 % (30 % tolerable)", "low says nothing"),
    test("sweep", "powered", "no dead spot or dc scratch after cleaning", "powered"),
  ],
  pot_switch: [test("contact", "ohms", "< 0.5 Ω", "lift")],
  fuse: [test("continuity", "out of holder", "good", "out")],
  lamp: [test("continuity", "out", "good", "out")],
  neon: [test("strike", "series R, variable dc", "55-90 V small; documented for regulators", "out")],
  vibrator: [test("contacts", "cleaned, current-limited supply", "starts below 80 % of supply", "out")],
  transformer: [
    test(
      "dc resistance",
      "cold",
      "within 15 % of documented (copper: +0.39 %/°C)",
      "low may be parallel; high convicts",
    ),
    test("insulation", "500 V, winding to core and winding to winding", ">= 10 MΩ old, look for trend", "high acquits"),
    test("no-load", "lamp limiter, secondaries open", "no heat in 30 min, ratio right", "powered"),
  ],
  cord_plug: [test("look, flex", "unplugged", "sound rubber or cloth, no nicks", "look")],
  tube: [test("tester or stage volts", "", "documented", "powered")],
  transistor: [test("gain and leakage", "lifted, tester for low volts", "documented", "lift")],
  unknown: [test("any", "", "user decides", "lift")],
};

/** What can be read that settles a class: a part under test stays when each of its groups has one good reading. */
export type Proof = readonly (readonly string[])[];

const LEAKS: Proof = [["insulation", "leakage"]];
const OHMS: Proof = [["resistance"]];

/** Readings that acquit, by class; a class that is not named is acquitted by its own value. Common practice. */
export const PROOFS: Readonly<Record<string, Proof>> = {
  paper_wax: LEAKS,
  paper_moulded: LEAKS,
  paper_bathtub: LEAKS,
  paper_block: LEAKS,
  oil: LEAKS,
  ceramic_feedthrough: LEAKS,
  ceramic_hv: LEAKS,
  elec_single: [["leakage", "insulation"], ["ESR"]],
  elec_multi: [["leakage", "insulation"], ["ESR"]],
  elec_can_insulated: [["leakage", "insulation"], ["ESR"]],
  elec_bias: [["ESR"]],
  elec_nonpolar: [["capacitance"], ["ESR"]],
  tantalum: LEAKS,
  fuse: OHMS,
};

/** What acquits a part that its class would keep and its use has tested: where it blocks B+ from a grid, leakage alone. */
export const BLOCKING_PROOF: Proof = LEAKS;
