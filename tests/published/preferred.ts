/** TABLE: the preferred series as published, and the old values that stand between their steps. */
import { type NearestRule, nearest, readValue, SERIES, type SeriesName, seriesNamed } from "../../src/core/index.js";
import { type Check, table } from "./table.js";

const IEC =
  "IEC 60063:2015, list as in an encyclopaedia's table; the same in two open-source lists (a database, npm mingo 7.2.7)";

/** One decade as lists print it. */
const decade = (name: string) => {
  const { steps } = seriesNamed(name);
  const places = steps.every((step) => step % 10 === 0) ? 1 : 2;
  return steps.map((step) => (step / 100).toFixed(places)).join(" ");
};

const LISTS: readonly Check[] = [
  ...table({ of: "one decade of the series", source: IEC }, decade, [
    ["E3", "1.0 2.2 4.7"],
    ["E6", "1.0 1.5 2.2 3.3 4.7 6.8"],
    ["E12", "1.0 1.2 1.5 1.8 2.2 2.7 3.3 3.9 4.7 5.6 6.8 8.2"],
    ["E24", "1.0 1.1 1.2 1.3 1.5 1.6 1.8 2.0 2.2 2.4 2.7 3.0 3.3 3.6 3.9 4.3 4.7 5.1 5.6 6.2 6.8 7.5 8.2 9.1"],
    [
      "E48",
      [
        "1.00 1.05 1.10 1.15 1.21 1.27 1.33 1.40 1.47 1.54 1.62 1.69 1.78 1.87 1.96 2.05 2.15 2.26 2.37 2.49",
        "2.61 2.74 2.87 3.01 3.16 3.32 3.48 3.65 3.83 4.02 4.22 4.42 4.64 4.87 5.11 5.36 5.62 5.90 6.19 6.49",
        "6.81 7.15 7.50 7.87 8.25 8.66 9.09 9.53",
      ].join(" "),
    ],
    [
      "E96",
      [
        "1.00 1.02 1.05 1.07 1.10 1.13 1.15 1.18 1.21 1.24 1.27 1.30 1.33 1.37 1.40 1.43 1.47 1.50 1.54 1.58",
        "1.62 1.65 1.69 1.74 1.78 1.82 1.87 1.91 1.96 2.00 2.05 2.10 2.15 2.21 2.26 2.32 2.37 2.43 2.49 2.55",
        "2.61 2.67 2.74 2.80 2.87 2.94 3.01 3.09 3.16 3.24 3.32 3.40 3.48 3.57 3.65 3.74 3.83 3.92 4.02 4.12",
        "4.22 4.32 4.42 4.53 4.64 4.75 4.87 4.99 5.11 5.23 5.36 5.49 5.62 5.76 5.90 6.04 6.19 6.34 6.49 6.65",
        "6.81 6.98 7.15 7.32 7.50 7.68 7.87 8.06 8.25 8.45 8.66 8.87 9.09 9.31 9.53 9.76",
      ].join(" "),
    ],
    [
      "E192",
      [
        "1.00 1.01 1.02 1.04 1.05 1.06 1.07 1.09 1.10 1.11 1.13 1.14 1.15 1.17 1.18 1.20 1.21 1.23 1.24 1.26",
        "1.27 1.29 1.30 1.32 1.33 1.35 1.37 1.38 1.40 1.42 1.43 1.45 1.47 1.49 1.50 1.52 1.54 1.56 1.58 1.60",
        "1.62 1.64 1.65 1.67 1.69 1.72 1.74 1.76 1.78 1.80 1.82 1.84 1.87 1.89 1.91 1.93 1.96 1.98 2.00 2.03",
        "2.05 2.08 2.10 2.13 2.15 2.18 2.21 2.23 2.26 2.29 2.32 2.34 2.37 2.40 2.43 2.46 2.49 2.52 2.55 2.58",
        "2.61 2.64 2.67 2.71 2.74 2.77 2.80 2.84 2.87 2.91 2.94 2.98 3.01 3.05 3.09 3.12 3.16 3.20 3.24 3.28",
        "3.32 3.36 3.40 3.44 3.48 3.52 3.57 3.61 3.65 3.70 3.74 3.79 3.83 3.88 3.92 3.97 4.02 4.07 4.12 4.17",
        "4.22 4.27 4.32 4.37 4.42 4.48 4.53 4.59 4.64 4.70 4.75 4.81 4.87 4.93 4.99 5.05 5.11 5.17 5.23 5.30",
        "5.36 5.42 5.49 5.56 5.62 5.69 5.76 5.83 5.90 5.97 6.04 6.12 6.19 6.26 6.34 6.42 6.49 6.57 6.65 6.73",
        "6.81 6.90 6.98 7.06 7.15 7.23 7.32 7.41 7.50 7.59 7.68 7.77 7.87 7.96 8.06 8.16 8.25 8.35 8.45 8.56",
        "8.66 8.76 8.87 8.98 9.09 9.20 9.31 9.42 9.53 9.65 9.76 9.88",
      ].join(" "),
    ],
  ]),
  ...table({ of: "one decade of the series", source: "ISO 3:1973; R5 to R20 as in an open-source list" }, decade, [
    ["R5", "1.0 1.6 2.5 4.0 6.3"],
    ["R10", "1.00 1.25 1.60 2.00 2.50 3.15 4.00 5.00 6.30 8.00"],
    ["R20", "1.00 1.12 1.25 1.40 1.60 1.80 2.00 2.24 2.50 2.80 3.15 3.55 4.00 4.50 5.00 5.60 6.30 7.10 8.00 9.00"],
  ]),
  ...table(
    { of: "one decade of the series", source: "ISO 3:1973, from memory at 3.35", status: "from memory" },
    decade,
    [
      [
        "R40",
        [
          "1.00 1.06 1.12 1.18 1.25 1.32 1.40 1.50 1.60 1.70 1.80 1.90 2.00 2.12 2.24 2.36 2.50 2.65 2.80 3.00",
          "3.15 3.35 3.55 3.75 4.00 4.25 4.50 4.75 5.00 5.30 5.60 6.00 6.30 6.70 7.10 7.50 8.00 8.50 9.00 9.50",
        ].join(" "),
      ],
    ],
  ),
  ...table(
    { of: "tolerance usual for the series", source: "IEC 60063 as in an encyclopaedia's E series page" },
    (name: SeriesName) => SERIES[name].usualTolerance,
    [
      ["E6", 0.2],
      ["E12", 0.1],
      ["E24", 0.05],
      ["E48", 0.02],
      ["E96", 0.01],
      ["E192", 0.005],
    ],
  ),
  ...table(
    {
      of: "whether every step of the first is one of the second",
      source: "worked out from the lists",
      status: "computed",
    },
    ([small, large]: readonly [SeriesName, SeriesName]) =>
      SERIES[small].steps.every((step) => SERIES[large].steps.includes(step)),
    [
      [["E3", "E6"], true],
      [["E6", "E12"], true],
      [["E12", "E24"], true],
      [["E48", "E96"], true],
      [["E96", "E192"], true],
      [["E24", "E192"], false],
    ],
  ),
  ...table(
    { of: "how many steps of E24 are in", source: "worked out from the lists", status: "computed" },
    (name: SeriesName) => SERIES.E24.steps.filter((step) => SERIES[name].steps.includes(step)).length,
    [
      ["E192", 11],
      ["E96", 6],
    ],
  ),
  ...table(
    {
      of: "the step at 10^(185/192)",
      source: "edaboard, thread 373015: 9.20 and not the rounded 9.19",
      locator: "E192, index 185",
    },
    (place: number) => SERIES.E192.steps[place],
    [[185, 920]],
  ),
];

/** Old values, common in lists of 1930 to 1950, and their nearest modern ones: E6, E12, E24, E96, by ratio and by difference. */
const NEAREST: readonly (readonly [old: string, byRatio: string, byDifference: string])[] = [
  ["25 k", "22 k, 27 k, 24 k, 24.9 k", "22 k, 27 k, 24 k, 24.9 k"],
  ["50 k", "47 k, 47 k, 51 k, 49.9 k", "47 k, 47 k, 51 k, 49.9 k"],
  ["250 k", "220 k, 270 k, 240 k, 249 k", "220 k, 270 k, 240 k, 249 k"],
  ["500 k", "470 k, 470 k, 510 k, 499 k", "470 k, 470 k, 510 k, 499 k"],
  ["400", "470, 390, 390, 402", "330, 390, 390, 402"],
  ["600", "680, 560, 620, 604", "680, 560, 620, 604"],
  ["7 k", "6.8 k, 6.8 k, 6.8 k, 6.98 k", "6.8 k, 6.8 k, 6.8 k, 6.98 k"],
  ["35 k", "33 k, 33 k, 36 k, 34.8 k", "33 k, 33 k, 36 k, 34.8 k"],
  ["40 k", "47 k, 39 k, 39 k, 40.2 k", "33 k, 39 k, 39 k, 40.2 k"],
  ["60 k", "68 k, 56 k, 62 k, 60.4 k", "68 k, 56 k, 62 k, 60.4 k"],
  ["75 k", "68 k, 82 k, 75 k, 75 k", "68 k, 68 k, 75 k, 75 k"],
  ["125 k", "150 k, 120 k, 130 k, 124 k", "100 k, 120 k, 120 k, 124 k"],
  ["150 k", "150 k, 150 k, 150 k, 150 k", "150 k, 150 k, 150 k, 150 k"],
  ["300 k", "330 k, 330 k, 300 k, 301 k", "330 k, 270 k, 300 k, 301 k"],
  ["2 M", "2.2 M, 2.2 M, 2 M, 2 M", "2.2 M, 1.8 M, 2 M, 2 M"],
  ["3 M", "3.3 M, 3.3 M, 3 M, 3.01 M", "3.3 M, 2.7 M, 3 M, 3.01 M"],
  ["5 M", "4.7 M, 4.7 M, 5.1 M, 4.99 M", "4.7 M, 4.7 M, 5.1 M, 4.99 M"],
  ["8 uF", "6.8 uF, 8.2 uF, 8.2 uF, 8.06 uF", "6.8 uF, 8.2 uF, 8.2 uF, 8.06 uF"],
  ["16 uF", "15 uF, 15 uF, 16 uF, 16.2 uF", "15 uF, 15 uF, 16 uF, 15.8 uF"],
  ["20 uF", "22 uF, 22 uF, 20 uF, 20 uF", "22 uF, 18 uF, 20 uF, 20 uF"],
  ["30 uF", "33 uF, 33 uF, 30 uF, 30.1 uF", "33 uF, 27 uF, 30 uF, 30.1 uF"],
  ["40 uF", "47 uF, 39 uF, 39 uF, 40.2 uF", "33 uF, 39 uF, 39 uF, 40.2 uF"],
  ["0.02 uF", "0.022 uF, 0.022 uF, 0.02 uF, 0.02 uF", "0.022 uF, 0.018 uF, 0.02 uF, 0.02 uF"],
  ["0.05 uF", "0.047 uF, 0.047 uF, 0.051 uF, 0.0499 uF", "0.047 uF, 0.047 uF, 0.051 uF, 0.0499 uF"],
  ["0.25 uF", "0.22 uF, 0.27 uF, 0.24 uF, 0.249 uF", "0.22 uF, 0.27 uF, 0.24 uF, 0.249 uF"],
  ["0.5 uF", "0.47 uF, 0.47 uF, 0.51 uF, 0.499 uF", "0.47 uF, 0.47 uF, 0.51 uF, 0.499 uF"],
  ["0.004 uF", "0.0047 uF, 0.0039 uF, 0.0039 uF, 0.00402 uF", "0.0033 uF, 0.0039 uF, 0.0039 uF, 0.00402 uF"],
  ["0.006 uF", "0.0068 uF, 0.0056 uF, 0.0062 uF, 0.00604 uF", "0.0068 uF, 0.0056 uF, 0.0062 uF, 0.00604 uF"],
  ["0.0005 uF", "0.00047 uF, 0.00047 uF, 0.00051 uF, 0.000499 uF", "0.00047 uF, 0.00047 uF, 0.00051 uF, 0.000499 uF"],
  ["250 pF", "220 pF, 270 pF, 240 pF, 249 pF", "220 pF, 270 pF, 240 pF, 249 pF"],
  ["100 pF", "100 pF, 100 pF, 100 pF, 100 pF", "100 pF, 100 pF, 100 pF, 100 pF"],
  ["350", "330, 330, 360, 348", "330, 330, 360, 348"],
];

const SHOWN: readonly SeriesName[] = ["E6", "E12", "E24", "E96"];
const sizeOf = (text: string) => readValue(text).value;

const nearestBy = (rule: NearestRule, column: 1 | 2): readonly Check[] =>
  NEAREST.flatMap((row) =>
    table(
      { of: `nearest by ${rule}`, source: "worked out twice from the lists above", status: "computed" },
      ([old, series]: readonly [string, SeriesName]) => nearest(sizeOf(old), SERIES[series], rule),
      SHOWN.map((series, index) => [[row[0], series], sizeOf(row[column].split(", ")[index]!)] as const),
    ),
  );

const SUBSTITUTION = table(
  { of: "nearest of E12", source: "radioworld.com, on the power of capacitors: .05 µF paper replaced by 0.047 µF" },
  (old: string) => nearest(sizeOf(old), SERIES.E12),
  [["0.05 uF", 0.047e-6]],
);

/** All checks on preferred numbers. */
export const PREFERRED = [...LISTS, ...nearestBy("ratio", 1), ...nearestBy("difference", 2), ...SUBSTITUTION];
