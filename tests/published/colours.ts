/** TABLE: colours of bands and dots as published. */
import { type BandCode, decodeBands, toleranceOfLetter } from "../../src/core/index.js";
import { type Check, table } from "./table.js";

const IEC = "IEC 60062, as in a simulator maker's colour table and RETMA REC-116 / MIL-R-11A";
const LIEC = "Lessons in Electric Circuits (Kuphaldt)";

const reading = (code: BandCode) => (colours: string) => decodeBands(colours, code).reading;
const value = (code: BandCode) => (colours: string) => reading(code)(colours).value;
const ohms = value("resistor");
const plus = (colours: string) => reading("resistor")(colours).tolerance?.plus;

const DIGITS: readonly Check[] = table(
  { of: "figure of the colour", source: IEC },
  (colour: string) => ohms(`brown ${colour} black`) - 10,
  ["black", "brown", "red", "orange", "yellow", "green", "blue", "violet", "grey", "white"].map(
    (c, i) => [c, i] as const,
  ),
);

const MULTIPLIERS: readonly Check[] = [
  ...table({ of: "multiplier of the colour", source: IEC }, (colour: string) => ohms(`brown black ${colour}`) / 10, [
    ["black", 1],
    ["brown", 10],
    ["red", 100],
    ["orange", 1e3],
    ["yellow", 1e4],
    ["green", 1e5],
    ["blue", 1e6],
    ["violet", 1e7],
    ["grey", 1e8],
    ["white", 1e9],
    ["gold", 0.1],
  ]),
  ...table(
    { of: "multiplier of the colour", source: "US Army OD1633", locator: "page 30" },
    (colour: string) => ohms(`brown black ${colour}`) / 10,
    [["silver", 0.01]],
  ),
  ...table(
    { of: "multiplier of the colour", source: "IEC 60062:2016, as in a standards catalogue's abstract" },
    (colour: string) => ohms(`brown black ${colour}`) / 10,
    [["pink", 0.001]],
  ),
];

const TOLERANCES: readonly Check[] = [
  ...table(
    {
      of: "tolerance of the colour",
      source: `${LIEC}; a simulator maker's colour table`,
      locator: "vol V, colors.sml",
    },
    (colour: string) => plus(`brown black black black ${colour}`),
    [
      ["brown", 0.01],
      ["red", 0.02],
      ["green", 0.005],
      ["blue", 0.0025],
      ["violet", 0.001],
      ["gold", 0.05],
      ["silver", 0.1],
      ["none", 0.2],
    ],
  ),
  ...table(
    { of: "tolerance of the colour", source: "IEC 60062:2016, as on a page about that edition" },
    (colour: string) => plus(`brown black black black ${colour}`),
    [
      ["orange", 0.0005],
      ["yellow", 0.0002],
    ],
  ),
  ...table(
    { of: "tolerance of the colour", source: "RETMA REC-116 / MIL-R-11A", locator: "composition resistors" },
    (colour: string) => plus(`brown black black ${colour}`),
    [
      ["gold", 0.05],
      ["silver", 0.1],
      ["none", 0.2],
    ],
  ),
];

const TEMPERATURE: readonly Check[] = table(
  { of: "millionths for each kelvin of the sixth band", source: "IEC 60062:2016", status: "from memory" },
  (colour: string) => reading("resistor")(`brown black black black brown ${colour}`).ppmPerKelvin,
  [
    ["black", 250],
    ["brown", 100],
    ["red", 50],
    ["orange", 15],
    ["yellow", 25],
    ["green", 20],
    ["blue", 10],
    ["violet", 5],
    ["grey", 1],
  ],
);

const RELIABILITY: readonly Check[] = table(
  { of: "failures in 1000 h of the fifth band", source: "US Army OD1633", locator: "Od163380030" },
  (colour: string) => reading("reliability")(`brown black red gold ${colour}`).failures,
  [
    ["brown", 0.01],
    ["red", 0.001],
    ["orange", 0.0001],
    ["yellow", 0.00001],
  ],
);

const WORKED: readonly Check[] = [
  ...table({ of: "ohms of the bands", source: LIEC, locator: "vol V, colors.sml, example list" }, ohms, [
    ["yellow violet orange gold", 47_000],
    ["green red gold silver", 5.2],
    ["white violet black", 97],
    ["orange orange black brown violet", 3_300],
    ["brown green grey silver red", 1.58],
    ["blue brown green silver blue", 6.15],
  ]),
  ...table({ of: "tolerance of the bands", source: LIEC, locator: "vol V, colors.sml, example list" }, plus, [
    ["yellow violet orange gold", 0.05],
    ["green red gold silver", 0.1],
    ["white violet black", 0.2],
    ["orange orange black brown violet", 0.001],
    ["brown green grey silver red", 0.02],
    ["blue brown green silver blue", 0.0025],
  ]),
  ...table({ of: "ohms of the bands", source: LIEC, locator: "vol VI, basic.sml line 947" }, ohms, [
    ["brown black black gold", 10],
    ["orange orange brown gold", 330],
  ]),
  ...table(
    { of: "ohms either way within the tolerance", source: LIEC, locator: "vol VI, basic.sml line 947" },
    (bands: string) => ohms(bands) * plus(bands)!,
    [
      ["brown black black gold", 0.5],
      ["orange orange brown gold", 16.5],
    ],
  ),
  ...table({ of: "ohms of the bands", source: "learn.parallax.com, resistor colour code" }, ohms, [
    ["red red brown gold", 220],
  ]),
  ...table(
    { of: "lowest and highest ohms", source: "learn.parallax.com, resistor colour code" },
    (bands: string) => [ohms(bands) * (1 - plus(bands)!), ohms(bands) * (1 + plus(bands)!)],
    [["red red brown gold", [209, 231]]],
  ),
  ...table({ of: "ohms of the bands", source: "encyclopaedia, electronic color code, picture 2-2-6-1-1" }, ohms, [
    ["red red blue brown brown", 2_260],
  ]),
  ...table({ of: "ohms of the bands", source: "awasa.org.za, old colour codes", locator: "figure B" }, ohms, [
    ["green grey red silver", 5_800],
  ]),
  ...table({ of: "ohms of the bands", source: "vintageradioworld.co.uk, codes" }, ohms, [
    ["red yellow orange", 24_000],
  ]),
  ...table({ of: "ohms of the bands", source: "machineryequipmentonline.com, reference data: resistors" }, ohms, [
    ["yellow violet orange gold", 47_000],
  ]),
];

/** Faults in published copies: what they print, and what the code says. Ours follows the code. */
const FAULTS: readonly Check[] = [
  ...table(
    { of: "tolerance of gold (a US Army course misprints 6 %)", source: "RETMA REC-116; OD1633 is wrong here" },
    plus,
    [["brown black red gold", 0.05]],
  ),
  ...table({ of: "ohms of the bands (a quiz sheet answers 47)", source: "IEC 60062; the sheet is wrong" }, ohms, [
    ["yellow violet yellow silver", 470_000],
  ]),
  ...table({ of: "ohms of the bands (a quiz sheet answers 22)", source: "IEC 60062; the sheet is wrong" }, ohms, [
    ["red red green silver", 2_200_000],
  ]),
  ...table(
    { of: "tolerance of the letter B (a page gives violet 0.5 %)", source: "IEC 60062; violet and B are 0.1 %" },
    (letter: string) => toleranceOfLetter(letter).plus,
    [["B", 0.001]],
  ),
];

/** All checks on colours. */
export const COLOUR_CODES = [
  ...DIGITS,
  ...MULTIPLIERS,
  ...TOLERANCES,
  ...TEMPERATURE,
  ...RELIABILITY,
  ...WORKED,
  ...FAULTS,
];
