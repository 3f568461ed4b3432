/** TABLE: body, end and dot, mica dots, and bands of paper and ceramic tubulars as published. */
import { type BandCode, type Colour, decodeBands } from "../../src/core/index.js";
import { type Check, table } from "./table.js";

const reading = (code: BandCode) => (colours: string) => decodeBands(colours, code).reading;
const value = (code: BandCode) => (colours: string) => reading(code)(colours).value;

const BODY_END_DOT: readonly Check[] = [
  ...table(
    { of: "ohms of body, end, dot", source: "awasa.org.za, old colour codes", locator: "figure A" },
    value("body-end-dot"),
    [["green grey red", 5_800]],
  ),
  ...table({ of: "ohms of body, end, dot", source: "vintageradioworld.co.uk, codes" }, value("body-end-dot"), [
    ["red red brown", 220],
    ["red none brown", 220],
  ]),
  ...table(
    { of: "tolerance without a colour", source: "awasa.org.za, old colour codes; Heathkit T-2 guide" },
    (colours: string) => reading("body-end-dot")(colours).tolerance?.plus,
    [["green grey red", 0.2]],
  ),
];

const MICA: readonly Check[] = [
  ...table(
    { of: "farads of six dots, type first", source: "US Army OD1647", locator: "figure 47" },
    value("mica, type first"),
    [["white brown red none blue red", 1_200e-12]],
  ),
  ...table(
    {
      of: "farads of six dots, type first",
      source: "AN 16-40BC224-2 as quoted on a radio list",
      locator: "pages 7-4, 7-5",
    },
    value("mica, type first"),
    [["black green brown red yellow black", 51e-12]],
  ),
  ...table(
    {
      of: "volts of six dots, three figures",
      source: "AN 16-40BC224-2 as quoted on a radio list",
      locator: "the same dots",
    },
    (dots: string) => reading("mica, three figures")(dots).volts,
    [["black green brown red yellow black", 200]],
  ),
  ...table(
    { of: "volts of a military mica", source: "AN 16-40BC224-2 as quoted on a radio list" },
    (dots: string) => reading("mica, type first")(dots).volts,
    [
      ["black green brown red gold brown", 500], // 510 pF
      ["black violet green red gold red", 300], // 7500 pF
    ],
  ),
  ...table({ of: "farads of three dots", source: "vcomp.co.uk, capacitor codes" }, value("mica, three dots"), [
    ["red green black", 25e-12],
  ]),
  ...table(
    { of: "volts of the dot", source: "vcomp.co.uk, capacitor codes" },
    (colour: string) => reading("mica, three figures")(`brown black black ${colour} gold black`).volts,
    [
      ["brown", 100],
      ["orange", 300],
      ["green", 500],
      ["gold", 1000],
      ["silver", 2000],
      ["none", 500],
    ],
  ),
  ...table(
    { of: "tolerance of the dot", source: "vcomp.co.uk, capacitor codes" },
    (colour: string) => reading("mica, three figures")(`brown black black brown ${colour} black`).tolerance?.plus,
    [
      ["none", 0.2],
      ["gold", 0.05],
      ["silver", 0.1],
    ],
  ),
  ...table(
    { of: "characteristic of the dot", source: "encyclopaedia, colour code of military mica capacitors" },
    (colour: Colour) => reading("mica, type first")(`black brown black ${colour} gold black`).characteristic,
    [
      ["brown", "B"],
      ["red", "C"],
      ["orange", "D"],
      ["yellow", "E"],
      ["green", "F"],
    ],
  ),
];

const TUBULARS: readonly Check[] = [
  ...table(
    { of: "farads, volts, tolerance of moulded paper", source: "audioasylum, thread 78314" },
    (bands: string) => {
      const { value, volts, tolerance } = reading("moulded paper")(bands);
      return [value, volts!, tolerance!.plus];
    },
    [["red red orange black yellow", [0.022e-6, 400, 0.2]]],
  ),
  ...table(
    { of: "tolerance of moulded paper", source: "audioasylum, thread 78314" },
    (colour: string) => reading("moulded paper")(`red red orange ${colour} yellow`).tolerance?.plus,
    [
      ["black", 0.2],
      ["white", 0.1],
    ],
  ),
  ...table(
    { of: "volts of two bands", source: "awasa.org.za, old colour codes: first two figures from 1000 V on" },
    (bands: string) => reading("moulded paper")(`red red orange black ${bands}`).volts,
    [["brown blue", 1_600]],
  ),
  ...table(
    {
      of: "millionths for each kelvin of a ceramic's first band",
      source: "JAN-C-20 / EIA RS-198",
      status: "from memory",
    },
    (colour: string) => reading("ceramic")(`${colour} brown black red white`).ppmPerKelvin,
    [
      ["black", 0],
      ["brown", -30],
      ["red", -80],
      ["orange", -150],
      ["yellow", -220],
      ["green", -330],
      ["blue", -470],
      ["violet", -750],
    ],
  ),
];

/** All checks on dots and on bands of capacitors. */
export const DOTS = [...BODY_END_DOT, ...MICA, ...TUBULARS];
