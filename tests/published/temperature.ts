/** TABLE: temperature codes of ceramic capacitors as published. */
import { readTemperatureCode } from "../../src/core/index.js";
import { type Check, table } from "./table.js";

/** What a class II code says: from, to, lowest and highest change. */
const classTwo = (code: string) => {
  const read = readTemperatureCode(code);
  return read.class === "II" ? [read.fromCelsius, read.toCelsius, -read.change.minus, read.change.plus] : null;
};
const classOne = (code: string) => {
  const read = readTemperatureCode(code);
  return read.class === "I" ? [read.ppmPerKelvin, read.ppmLimits] : null;
};

const TEMPERATURE: readonly Check[] = [
  ...table(
    { of: "lowest temperature of the letter", source: "TI SLAA701B", locator: "table 1-16" },
    (x: string) => classTwo(`${x}7R`)?.[0],
    [
      ["X", -55],
      ["Y", -30],
      ["Z", 10],
    ],
  ),
  ...table(
    { of: "highest temperature of the figure", source: "TI SLAA701B; riansanderson.blogspot" },
    (x: string) => classTwo(`X${x}R`)?.[1],
    [
      ["2", 45],
      ["4", 65],
      ["5", 85],
      ["6", 105],
      ["7", 125],
      ["8", 150],
      ["9", 200],
    ],
  ),
  ...table(
    { of: "change over the range", source: "TI SLAA701B (P to V); 3bmdesign" },
    (x: string) => classTwo(`X7${x}`)?.slice(2),
    [
      ["A", [-0.01, 0.01]],
      ["B", [-0.015, 0.015]],
      ["C", [-0.022, 0.022]],
      ["D", [-0.033, 0.033]],
      ["E", [-0.047, 0.047]],
      ["F", [-0.075, 0.075]],
      ["P", [-0.1, 0.1]],
      ["R", [-0.15, 0.15]],
      ["S", [-0.22, 0.22]],
      ["T", [-0.33, 0.22]],
      ["U", [-0.56, 0.22]],
      ["V", [-0.82, 0.22]],
    ],
  ),
  ...table(
    { of: "significant figure of the letter", source: "EIA-198 as at 3bmdesign; sharps.lv" },
    (x: string) => -classOne(`${x}0G`)![0]! || 0,
    [
      ["C", 0],
      ["B", 0.3],
      ["L", 0.8],
      ["A", 0.9],
      ["M", 1],
      ["P", 1.5],
      ["R", 2.2],
      ["S", 3.3],
      ["T", 4.7],
      ["V", 5.6],
      ["U", 7.5],
    ],
  ),
  ...table(
    { of: "multiplier of the figure", source: "EIA-198 as at 3bmdesign; sharps.lv" },
    (x: string) => classOne(`M${x}G`)![0],
    [
      ["0", -1],
      ["1", -10],
      ["2", -100],
      ["3", -1000],
      ["6", 10],
      ["7", 100],
      ["8", 1000],
    ],
  ),
  ...table(
    { of: "limits of the coefficient", source: "EIA-198 as at 3bmdesign; a ceramic maker's table" },
    (x: string) => classOne(`U2${x}`)![1],
    [
      ["G", 30],
      ["H", 60],
      ["J", 120],
      ["K", 250],
      ["L", 500],
      ["M", 1000],
      ["N", 2500],
    ],
  ),
  ...table(
    { of: "whether code and trade name say the same", source: "3bmdesign.com, temperature codes" },
    ([code, name]: readonly [string, string]) => classOne(code)![0] === classOne(name)![0],
    [
      [["M7G", "P100"], true],
      [["C0G", "NP0"], true],
      [["B2G", "N030"], true],
      [["U1G", "N075"], true],
      [["P2G", "N150"], true],
      [["S2H", "N330"], true],
      [["T2H", "N470"], true],
      [["U2J", "N750"], true],
      [["P3K", "N1500"], true],
      [["R3L", "N2200"], true],
    ],
  ),
];

/** Faults in published copies: what they print, and what the code says. Ours follows the code. */
const FAULTS: readonly Check[] = [
  ...table(
    { of: "lowest temperature of Z (a forum post says -10)", source: "TI SLAA701B; the post is wrong" },
    (x: string) => classTwo(x)?.[0],
    [["Z5U", 10]],
  ),
  ...table(
    { of: "highest temperature of 7 (a forum post says 120)", source: "TI SLAA701B; the post is wrong" },
    (x: string) => classTwo(x)?.[1],
    [["X7R", 125]],
  ),
];

/** All checks on temperature codes. */
export const TEMPERATURE_CODES = [...TEMPERATURE, ...FAULTS];
