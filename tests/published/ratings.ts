/** TABLE: limits of resistors and derating as published. */
import {
  BODIES,
  BODY_VOLTS,
  criticalOhms,
  deratingShare,
  heatShare,
  LADDERS,
  leastRating,
  loadOf,
  maxVolts,
  peakStress,
  rungFor,
} from "../../src/core/index.js";
import { type Check, table } from "./table.js";

const COMPOSITION =
  "carbon composition data sheets of three makers (RC 1/4 to 1 W, sizes RC07, RC20, RC32): they agree";
const FILM = "a metal film maker's specification";
const WORKED = "worked out in the reference files from the inputs beside it";

const RESISTORS: readonly Check[] = [
  ...table(
    { of: "largest continuous volts of a composition body", source: COMPOSITION, locator: "table" },
    (watts: number) => BODY_VOLTS.carbon_comp_old!.find(([of]) => of === watts)?.[1],
    [
      [0.25, 250],
      [0.5, 350],
      [1, 500],
    ],
  ),
  ...table(
    { of: "millimetres of a composition body, length and diameter", source: COMPOSITION, locator: "table" },
    (watts: number) => {
      const body = BODIES.find(({ type, watts: of }) => type === "carbon_comp_old" && of === watts)!;
      return [body.lengthMetres * 1e3, body.diameterMetres * 1e3];
    },
    [
      [0.25, [6.3, 2.4]],
      [0.5, [9.5, 3.6]],
      [1, [14.3, 5.7]],
    ],
  ),
  ...table(
    { of: "critical ohms of a composition body", source: WORKED, status: "computed" },
    ([watts, bodyVolts]: readonly [number, number]) => criticalOhms({ watts, bodyVolts }),
    [
      [[0.25, 250], 250_000],
      [[0.5, 350], 245_000],
      [[1, 500], 250_000],
      [[2, 500], 125_000],
      [[2, 750], 281_250],
    ],
  ),
  ...table(
    { of: "critical ohms of a metal film body", source: FILM, locator: "table 1", within: 1e-5 },
    ([watts, bodyVolts]: readonly [number, number]) => criticalOhms({ watts, bodyVolts }),
    [
      [[0.125, 150], 180_000],
      [[0.25, 250], 250_000],
      [[0.5, 300], 180_000],
      [[1, 350], 122_500],
      [[2, 500], 125_000],
      [[3, 500], 83_333],
      [[5, 500], 50_000],
    ],
  ),
  ...table(
    {
      of: "rated volts, the smaller of the root and the style's limit (web copies lost the radical and print E = PR)",
      source: "MIL-R-10509J 3.6; MIL-R-93F 3.5; MIL-PRF-39005 3.5.8",
    },
    ([ohms, watts, bodyVolts]: readonly [number, number, number]) => maxVolts({ ohms, watts, bodyVolts }),
    [
      [[100, 0.25, 250], 5],
      [[40_000, 0.25, 250], 100],
      [[1_000_000, 0.5, 350], 350],
    ],
  ),
];

const CURVES: readonly Check[] = (
  [
    ["carbon composition, RC", "a composition maker's curve of 2017", 70, 125],
    ["metal film", "two makers' metal film curves", 70, 155],
    ["wirewound RWR", "MIL-R-39007 abstract", 25, 275],
    ["chassis wirewound", "MIL-R-39009 abstract", 25, 275],
  ] as const
).flatMap(([part, source, kneeCelsius, zeroCelsius]) =>
  table(
    { of: `share of watts that a ${part} carries`, source },
    (celsius: number) => heatShare({ celsius, kneeCelsius, zeroCelsius }),
    [
      [kneeCelsius, 1],
      [(kneeCelsius + zeroCelsius) / 2, 0.5],
      [zeroCelsius, 0],
    ],
  ),
);

const SD18 = "NAVSEA SD-18 limits as transcribed in an open reliability toolkit at 2797d82 (secondary)";

const POLICIES: readonly Check[] = [
  ...table(
    { of: "share of rated volts", source: SD18, locator: "stress tables" },
    (part: string) => deratingShare({ policy: "NAVSEA SD-18", part, of: "volts" }).share,
    [
      ["paper", 0.55],
      ["film", 0.55],
      ["metallised film", 0.55],
      ["mica", 0.7],
      ["button mica", 0.55],
      ["glass", 0.6],
      ["ceramic", 0.6],
      ["temperature-compensating ceramic", 0.6],
      ["tantalum, solid", 0.6],
      ["tantalum, wet", 0.6],
      ["electrolytic", 0.7],
      ["dry electrolytic", 0.7],
      ["trimmer", 0.6],
      ["film resistor", 0.7],
      ["power film resistor", 0.55],
      ["precision wirewound", 0.7],
      ["wirewound resistor", 0.7],
      ["chassis wirewound", 0.7],
    ],
  ),
  ...table(
    { of: "share of rated watts", source: SD18, locator: "stress tables" },
    (part: string) => deratingShare({ policy: "NAVSEA SD-18", part, of: "watts" }).share,
    [
      ["film resistor under 1/2 W", 0.65],
      ["film resistor", 0.55],
      ["power film resistor", 0.55],
      ["precision wirewound under 1/2 W", 0.7],
      ["precision wirewound", 0.5],
      ["wirewound resistor", 0.6],
      ["chassis wirewound", 0.5],
      ["composition control", 0.5],
      ["film control", 0.5],
      ["wirewound control", 0.55],
    ],
  ),
  ...table(
    { of: "share of rated watts", source: "NAVSO P-3641A as quoted on a derating page (secondary)" },
    (part: string) => deratingShare({ policy: "NAVSO P-3641A", part, of: "watts" }).share,
    [["resistor", 0.75]],
  ),
  ...table(
    { of: "share of rated volts", source: "NAVSO P-3641A as quoted on a derating page: 25 % less at least" },
    (part: string) => deratingShare({ policy: "NAVSO P-3641A", part, of: "volts" }).share,
    [["capacitor", 0.75]],
  ),
  ...table(
    { of: "share of rated watts", source: "NEETS module 1 chapter 3 as summarised twice" },
    (part: string) => deratingShare({ policy: "half load", part, of: "watts" }).share,
    [["resistor", 0.5]],
  ),
];

const RATINGS_WANTED: readonly Check[] = [
  ...table(
    { of: "least rating for stress and share", source: WORKED, status: "computed", within: 1e-3 },
    ([stress, share]: readonly [number, number]) => leastRating({ stress, share }),
    [
      [[350, 0.55], 636.4],
      [[350, 0.7], 500],
      [[0.35, 0.55], 0.636],
    ],
  ),
  ...table(
    { of: "rating to pick from the ladder", source: WORKED, status: "computed" },
    ([needed, ladder]: readonly [number, string]) => rungFor(needed, LADDERS[ladder]!),
    [
      [[636.4, "film_V"], 1000], // 630 V falls short by one in a hundred
      [[500, "elec_V"], 500], // 450 V fails this policy
      [[0.636, "res_W"], 1],
    ],
  ),
  ...table(
    { of: "watts of 10 mA through a drop of 100 V", source: "Heathkit T-2 guide, plate resistor" },
    (amperes: number) => loadOf({ ohms: 100 / amperes, watts: 1 }, { amperes }).watts,
    [[0.01, 1]],
  ),
  ...table(
    {
      of: "stress of dc and ac together",
      source: "documentation of a reliability-prediction package: dc + sqrt 2 x ac",
    },
    ([dcVolts, acVolts]: readonly [number, number]) => peakStress({ dcVolts, acVolts }),
    [[[100, 100], 100 * (1 + Math.SQRT2)]],
  ),
];

/** All checks on ratings and derating. */
export const RATINGS = [...RESISTORS, ...CURVES, ...POLICIES, ...RATINGS_WANTED];
