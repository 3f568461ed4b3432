/** TABLE: letters and figures printed on parts, and what they mean as published. */
import { decodeMark, type LetterSystem, toleranceOfLetter, writeValue } from "../../src/core/index.js";
import { type Check, table } from "./table.js";

const RKM = "IEC 60062, examples as in an encyclopaedia's RKM code";
const EIA_LIST = "riansanderson.blogspot (EIA list); IEC 60062";

const even = (letter: string) => toleranceOfLetter(letter).plus;
const ofSystem = (system: LetterSystem) => (letter: string) => {
  const { minus, plus } = toleranceOfLetter(letter, system);
  return [-minus || 0, plus];
};
const farads = (mark: string) => decodeMark(mark, "capacitor").value;
const picofarads = (letter: string) => toleranceOfLetter(letter, "IEC", 5e-12).plus * 5;

const LETTER_VALUES: readonly (readonly [string, number])[] = [
  ["R47", 0.47],
  ["4R7", 4.7],
  ["470R", 470],
  ["4K7", 4_700],
  ["47K", 47_000],
  ["47K3", 47_300],
  ["470K", 470_000],
  ["4M7", 4_700_000],
];

const RESISTANCE: readonly Check[] = [
  ...table(
    { of: "ohms of the mark", source: RKM },
    (mark: string) => decodeMark(mark, "resistor").value,
    LETTER_VALUES,
  ),
  ...table(
    { of: "letter code of the ohms", source: RKM },
    (ohms: number) => writeValue(ohms, "resistor", "code"),
    LETTER_VALUES.map(([mark, ohms]) => [ohms, mark] as const),
  ),
];

const TOLERANCE_LETTERS: readonly Check[] = [
  ...table({ of: "tolerance of the letter", source: EIA_LIST }, even, [
    ["B", 0.001],
    ["C", 0.0025],
    ["D", 0.005],
    ["F", 0.01],
    ["G", 0.02],
    ["J", 0.05],
    ["K", 0.1],
    ["M", 0.2],
  ]),
  ...table(
    { of: "picofarads of the letter below 10 pF", source: "3bmdesign; keith-snook; signalpro; marvac agree" },
    picofarads,
    [
      ["B", 0.1],
      ["C", 0.25],
      ["D", 0.5],
      ["F", 1],
      ["G", 2],
    ],
  ),
  ...table({ of: "tolerance of the letter", source: "3bmdesign; IEC 60062" }, even, [
    ["H", 0.03],
    ["N", 0.3],
  ]),
  ...table(
    { of: "low and high of the letter", source: "signalpro; 3bmdesign; marvac; IEC 60062 agree" },
    ofSystem("IEC"),
    [["Z", [-0.2, 0.8]]],
  ),
  ...table({ of: "low and high of the letter", source: "3bmdesign; IEC 60062" }, ofSystem("IEC"), [
    ["S", [-0.2, 0.5]],
    ["Q", [-0.1, 0.3]],
    ["T", [-0.1, 0.5]],
  ]),
  ...table({ of: "low and high of the letter, American", source: "signalpro; sharps.lv for P" }, ofSystem("EIA"), [
    ["L", [-0.15, 0.15]],
    ["P", [0, 1]],
    ["Y", [-0.2, 0.5]],
    ["W", [-0.2, 0.4]],
  ]),
  ...table(
    { of: "low and high of the letter, ERIE", source: "keith-snook.info, component colour codes" },
    ofSystem("ERIE"),
    [
      ["H", [-0.025, 0.025]],
      ["N", [-0.2, 0.4]],
      ["P", [-0.2, 0.8]],
    ],
  ),
  ...table({ of: "tolerance of the letter", source: "signalpro's remark on IEC letters" }, even, [
    ["L", 0.0001],
    ["W", 0.0005],
  ]),
];

const CAPACITANCE: readonly Check[] = [
  ...table({ of: "farads of the mark", source: "a reviewer for electronics examinations, capacitor codes" }, farads, [
    ["103", 10_000e-12],
    ["104", 100_000e-12],
    ["154", 150_000e-12],
  ]),
  ...table({ of: "farads of the mark", source: "hawaiipk.me, capacitor codes" }, farads, [
    ["203", 20_000e-12],
    ["502", 5_000e-12],
  ]),
  ...table({ of: "farads of the mark", source: "sharps.lv, capacitor codes" }, farads, [["104K", 100_000e-12]]),
  ...table(
    { of: "tolerance of the mark", source: "sharps.lv, capacitor codes" },
    (mark: string) => decodeMark(mark, "capacitor").tolerance?.plus,
    [["104K", 0.1]],
  ),
  ...table({ of: "farads of the mark", source: "EIA practice", status: "from memory" }, farads, [
    ["229", 2.2e-12],
    ["228", 0.22e-12],
  ]),
];

const erie = (mark: string) => decodeMark(mark, "capacitor", "ERIE");

const ERIE: readonly Check[] = [
  ...table(
    { of: "farads of the ERIE mark", source: "keith-snook.info, component colour codes" },
    (mark: string) => erie(mark).value,
    [
      ["470", 470e-12],
      ["470JN", 470e-12],
      ["1K", 1_000e-12],
      ["3K3", 3_300e-12],
      [".01", 0.01e-6],
    ],
  ),
  ...table(
    { of: "tolerance of the ERIE mark", source: "keith-snook.info, component colour codes" },
    (mark: string) => erie(mark).tolerance?.plus,
    [["470JN", 0.05]],
  ),
  ...table(
    { of: "millionths for each kelvin of the ERIE letter", source: "keith-snook.info, component colour codes" },
    (letter: string) => erie(`470J${letter}`).ppmPerKelvin,
    [
      ["W", 470],
      ["A", 100],
      ["B", 30],
      ["C", 0],
      ["D", -30],
      ["E", -50],
      ["F", -80],
      ["G", -150],
      ["H", -220],
      ["J", -330],
      ["K", -470],
      ["L", -560],
      ["N", -750],
    ],
  ),
];

/** Faults in published copies: what they print, and what the code says. Ours follows the code. */
const FAULTS: readonly Check[] = [
  ...table(
    { of: "ohms of the mark (a quiz sheet answers 44.3)", source: "EIA three figures; the sheet is wrong" },
    (mark: string) => decodeMark(mark, "resistor").value,
    [["443", 44_000]],
  ),
  ...table(
    { of: "farads of the mark (a page answers 0.58 µF)", source: "EIA three figures; signalpro.biz is wrong" },
    farads,
    [["564K", 0.56e-6]],
  ),
];

/** All checks on marks and letters. */
export const MARKS = [...RESISTANCE, ...TOLERANCE_LETTERS, ...CAPACITANCE, ...ERIE, ...FAULTS];
