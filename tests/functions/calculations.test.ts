import { beforeAll, expect, test } from "vitest";
import { catalogue } from "../../src/start/reference/catalogue.js";
import { readExample } from "../../src/start/reference/example.js";
import { provideCustomFunctions } from "./customFunctions.js";
import { loadFunctions } from "./loadFunctions.js";

let call: Awaited<ReturnType<typeof loadFunctions>>;
beforeAll(async () => {
  provideCustomFunctions();
  call = await loadFunctions(await catalogue());
});

/** Numbers to six figures; an error as its name. */
const plain = (cell: unknown) => {
  if (typeof cell === "number") return Number(cell.toPrecision(6));
  return typeof cell === "object" && cell !== null ? (cell as { code: string }).code : (cell ?? "");
};

function answer(example: string): { found: unknown[][]; gives: unknown[][] } {
  const { id, given, gives } = readExample(example);
  try {
    return { found: call.get(id)!(...given).map((row) => row.map(plain)), gives: gives.map((row) => row.map(plain)) };
  } catch (error) {
    return { found: [[(error as { code: string }).code]], gives: gives.map((row) => row.map(plain)) };
  }
}

test.each([
  // formula with its answer, why
  [
    'LUG.BAND_ENCODE("0.022 uF", 20%, , , "moulded paper", 400) -> "red red orange black yellow"',
    "moulded paper with its volts",
  ],
  ['LUG.BAND_ENCODE("25 pF", 5%, , , "mica, three dots") -> #N/A', "three dots say 20 % only"],
  ['LUG.DERATE(0.35, "NAVSEA SD-18", , "film resistor") -> {1, 0.636364}', "a named policy"],
  [
    'LUG.DERATE("350 V", "NAVSEA SD-18", "film volts", "film") -> {1000, 636.364}',
    "630 V falls short by one in a hundred",
  ],
  ["LUG.DERATE(0.4, 50%, , , 112.5) -> {2, 1.6}", "half power is left at 112.5 degrees"],
  ['LUG.DERATE(0.4, "mine", , "film", , , , {"mine", "film", "watts", 40%}) -> {1, 1}', "the user's own policy"],
  [
    'LUG.DERATE(0.4, "mine", , "film", 100, , , {"mine", "film", "watts", 40%, 50, 150}) -> {2, 2}',
    "a policy with its own heat: half is left between 50 and 150 degrees (worked: 0.4 / 0.4 / 0.5)",
  ],
  [
    'LUG.DERATE(0.4, "mine", , "film", , , , {"part", "policy", "share allowed", "watts or volts"; "film", "mine", 40%, "watts"}) -> {1, 1}',
    "the sheet by its heads, in any order",
  ],
  ['LUG.DERATE(0.4, "mine", , "film", , , , {"mine", "film", "kilos", 40%}) -> #VALUE!', "a row that can't be read"],
  ['LUG.DERATE(0.4, "half load", , , , , , {"mine", "film", "watts", 40%}) -> #VALUE!', "own policies stand alone"],
  ['LUG.DERATE("1/2 W", "2 steps") -> {2, 2}', "two rungs up"],
  ["LUG.DERATE(100) -> #N/A", "nothing larger is made"],
  ["LUG.DERATE({0.5; ; 2}) -> {1, 1; , ; 3, 3}", "down a column, a blank stays blank"],
  ['LUG.DERATE(0.5, "a bit") -> #VALUE!', "no derating"],
  ['LUG.MAX_VOLTS("1 M", 0.5, "metal film") -> 250', "the usual body of a technology"],
  ['LUG.MAX_VOLTS("1 M", 0.5) -> 707.107', "watts alone"],
  ['LUG.MAX_VOLTS("1 M", 0.5, "bakelite") -> #VALUE!', "no such technology"],
  ['LUG.LOAD_OF("100 k", 0.5, , "1 mA") -> {0.2, "", 0.1}', "by the current"],
  ['LUG.LOAD_OF("100 k", 0.5) -> #VALUE!', "neither volts nor amperes"],
  [
    'LUG.WORST_CASE("1 k || 1 k", {5%; 20%}) -> {500, 434.286, 560, 448.461, 551.539}',
    "a tolerance for each part: 950 || 800 and 1050 || 1200 at worst",
  ],
  ['LUG.WORST_CASE("1 k || 1 k", {5%; 20%; 1%}) -> #VALUE!', "more tolerances than parts"],
  [
    'LUG.WORST_CASE("10 uF + 10 uF", 10%, "capacitor") -> {0.000005, 0.0000045, 0.0000055, 0.00000464645, 0.00000535355}',
    "capacitors",
  ],
  [
    'LUG.BAND_DECODE("brown black black brown brown") -> {1000, "±1 %", "from the other end 110 Ω ±1 %"}',
    "both ways round",
  ],
  ['LUG.BAND_DECODE("green grey red", "body-end-dot") -> {5800, "±20 %", ""}', "no preferred value is asked for"],
  ['LUG.BAND_DECODE("blue mauve") -> #VALUE!', "no colour"],
  ['LUG.BAND_ENCODE("2.26 k", 1%) -> "red red blue brown brown"', "three figures need five bands"],
  ['LUG.BAND_ENCODE(10, 20%) -> "brown black black"', "20 % has no band"],
  ["LUG.BAND_ENCODE(12345) -> #N/A", "more figures than any bands"],
  [
    'LUG.CODE_DECODE("470JN", , "ERIE") -> {0.00000000047, "±5 %", "-750 ppm/K; read as it stands; a later part would mean a power of ten by the third figure"}',
    "old tubulars",
  ],
  ['LUG.CODE_DECODE("4K7", "resistor") -> {4700, "", ""}', "a resistor"],
  ['LUG.CODE_ENCODE("47 k", "resistor", 10%) -> #VALUE!', "473K would be read as a multiplier"],
  ['LUG.CODE_ENCODE("4.7 k", "resistor", 5%, "letter") -> "4K7J"', "the letter code"],
  ["LUG.NEW_VOLTS(600) -> 630", "film for paper"],
  ['LUG.NEW_VOLTS(, "electrolytic", 350, 525) -> #N/A', "525 V at warm-up is more than is made"],
  ['LUG.NEW_VOLTS(, "electrolytic", 350) -> 400', "volts in service alone: 350 / 0.9"],
  ['LUG.NEW_VOLTS() -> ""', "nothing known, nothing said"],
  ["LUG.WARMUP_PEAK(350) -> 520.358", "a winding for 117 V at 123 V"],
  ['LUG.HEATER_DROP(90, 0.3, "diode", 117) -> #N/A', "a half wave of 117 V has 82.7 V rms"],
  ['LUG.HEATER_DROP(69, "300 mA", "capacitor", 117) -> {0.00000842196, 0, 94.4881}', "a capacitor burns nothing"],
  [
    'LUG.RIPPLE_OF("60 mA", "20 uF", 350, 60, "half") -> {50, 14.4338, 325, "straight-line discharge over the whole period: reads high by the time the rectifier conducts"}',
    "half wave",
  ],
  ['LUG.XY_CLASS("grid") -> #VALUE!', "no place at the line"],
  [
    'LUG.BLEED_TIME("20 uF", "100 k", 450, 10) -> {7.61332, "7.7 s to 10 V: wait, then prove 0 V"}',
    "always the same ending",
  ],
  ['LUG.STRING_SHARE({"8 uF"; "16 uF"}, 450, {"2 M"; "1 M"}) -> {300; 150}', "at dc the ohms decide"],
  ['LUG.STRING_SHARE({"8 uF"; "16 uF"}, 450, , "100 k") -> {225; 225}', "equal balancing resistors"],
  ['LUG.STRING_SHARE({"8 uF"; "16 uF"}, 450, {"2 M"}) -> #VALUE!', "one insulation for two"],
  ['LUG.LEAK_MAX("20 uF", 450, "0.05 CV + 250 uA") -> 0.0007', "another rule"],
  ['LUG.LEAK_MAX("20 uF", 600) -> #N/A', "beyond the rule"],
  ['LUG.VERDICT("390 k", "470 k", 20%, , "in place") -> "says nothing in place"', "a low reading in place"],
  ['LUG.VERDICT("612 k", "470 k", 20%, , "in place") -> "bad"', "a high reading in place convicts"],
  ['LUG.VERDICT("0.03 uF", "0.05 uF", 20%, , "in place") -> "bad"', "a low capacitance in place convicts"],
  ['LUG.VERDICT(109500, 100000, 10%) -> "likely good"', "inside by less than the meter is sure of"],
  ['LUG.VERDICT(109500, 100000, 10%, , , "strict") -> "bad"', "strict"],
  ['LUG.PARALLEL_PATH("10 nF", "14 nF") -> 0.000000004', "capacitors add"],
  ['LUG.PARALLEL_PATH("50 k", "100 k") -> #VALUE!', "no path makes it read higher"],
  ['LUG.PARALLEL_PATH("50 k", "50 k") -> "none"', "nothing in parallel"],
  ["LUG.SELENIUM_RESISTOR(1, 0.1, 0.5) -> #N/A", "silicon drops as much"],
  [
    'LUG.IN_PLACE_TELLS("capacitance", "0.2 uF", "0.08 uF", "0.12 uF") -> {"says nothing in place", "parallel capacitors only raise it: a low reading convicts, a high or true one proves nothing"}',
    "neighbours raise capacitance",
  ],
  ["LUG.ORDER_QTY(7, 9) -> {0, 0}", "enough at hand"],
  ["LUG.ORDER_QTY({7; ; 11}, , , , 10, 10) -> {10, 10; , ; 20, 20}", "down a column of an existing sheet"],
  ["LUG.ORDER_QTY(7, , , 2.5) -> #VALUE!", "no half pieces in a pack"],
  ["LUG.PACK_COST(8, 0.3) -> {2.4, 8, 8}", "one price"],
  ["LUG.PACK_COST(12, {1, 1.5; 5, 1.2}, 5) -> {4.5, 3, 15}", "packs of five"],
  ["LUG.PACK_COST(8, 0.3, 1, 1, 1, 5) -> #N/A", "more than there are"],
  ['LUG.PACK_COST(8, {"", ""}) -> #N/A', "no price"],
  [
    'LUG.BODY_FITS("19 mm", "8 mm", "38 mm", "8.5 mm", "0.5 mm") -> {FALSE, 0.018, -0.0005}',
    "sleeving makes it too tight",
  ],
  ["LUG.LAMP(1) -> #VALUE!", "no such lamp"],
  ['LUG.CAN_SECTIONS("A 40 mf 450 V, B 20 mf 25 V") -> {"A", 0.00004, 450; "B", 0.00002, 25}', "letters as printed"],
  ['LUG.CAN_SECTIONS("hello") -> #VALUE!', "no can"],
])("%s: %s", (example) => {
  const { found, gives } = answer(example);
  expect(found).toEqual(gives);
});
