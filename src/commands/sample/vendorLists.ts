import { SERIES, writeValue } from "../../core/index.js";

/** E12 resistor values from 10 ohms to 10 megohms, as catalogues print them. */
const OHMS = [0.1, 1, 10, 100, 1e3, 1e4]
  .flatMap((decade) => SERIES.E12.steps.map((step) => Number((step * decade).toPrecision(2))))
  .concat(1e7);

const FILM_FARADS = [1e-9, 1e-8, 1e-7]
  .flatMap((decade) => [1, 2.2, 3.3, 4.7, 6.8].map((step) => step * decade))
  .concat(1e-6);

const code = (value: number, kind: "resistor" | "capacitor") => writeValue(value, kind, "code").replace(/\s/g, "");

const csv = (heads: readonly string[], rows: readonly (readonly (string | number)[])[]) =>
  `${[heads, ...rows].map((row) => row.map((field) => (/[",;]/.test(String(field)) ? `"${field}"` : field)).join(",")).join("\n")}\n`;

/** A big house: every value, breaks at ten and a hundred, its post is dear. */
function corwen(): string {
  const films = OHMS.flatMap((ohms, i) => [
    [`CW-1${i + 100}`, `Metal film resistor ${code(ohms, "resistor")} 1W 5% axial`, 4000, 1, 0.16, 0.11, 0.06],
    [
      `CW-2${i + 100}`,
      `Metal oxide resistor ${code(ohms, "resistor")} 2W 5% axial flameproof`,
      900,
      1,
      0.28,
      0.21,
      0.14,
    ],
  ]);
  const wound = [3.3, 5.6, 33, 150, 240, 270, 330].map((ohms, i) => [
    `CW-3${i + 10}`,
    `Wirewound resistor ${code(ohms, "resistor")} ${ohms === 3.3 ? 3 : 10}W 5% axial`,
    210,
    1,
    0.95,
    0.8,
    0.62,
  ]);
  const polyester = FILM_FARADS.map((farads, i) => [
    `CW-4${i + 10}`,
    `Polyester film capacitor ${writeValue(farads, "capacitor")} 630V 10% axial`,
    320,
    1,
    0.62 + i * 0.05,
    0.5 + i * 0.04,
    0.38 + i * 0.03,
  ]);
  const electrolytic = [
    [10, 450, 1.35],
    [22, 450, 1.9],
    [33, 450, 2.3],
    [47, 450, 2.75],
    [47, 160, 0.9],
    [33, 160, 0.8],
    [100, 350, 3.4],
    [68, 350, 2.9],
    [47, 350, 2.4],
    [22, 500, 3.1],
    [100, 63, 0.45],
    [33, 63, 0.35],
    [4.7, 63, 0.25],
    [100, 200, 1.6],
  ].map(([microfarads, volts, price], i) => [
    `CW-5${i + 10}`,
    `Aluminium electrolytic capacitor ${microfarads} µF ${volts}V 20% axial`,
    140,
    1,
    price!,
    price! * 0.85,
    price! * 0.7,
  ]);
  const safety = [
    ["CW-601", "Safety capacitor Y2 0.01 µF 300VAC 20% radial ceramic", 500, 1, 0.42, 0.36, 0.3],
    ["CW-602", "Safety capacitor X2 0.047 µF 310VAC 10% radial polypropylene film", 260, 1, 0.55, 0.46, 0.4],
    ["CW-603", "Safety capacitor X2 0.1 µF 310VAC 10% radial polypropylene film", 300, 1, 0.6, 0.5, 0.42],
    ["CW-604", "Safety capacitor Y2 0.022 µF 300VAC 20% radial film", 80, 1, 0.95, 0.84, 0.75],
    ["CW-605", "Rectifier silicon 1A 1000V axial", 900, 1, 0.12, 0.09, 0.06],
  ];
  return csv(
    ["Stock number", "Description", "Stock", "Minimum", "Price 1", "Price 10", "Price 100"],
    [...films, ...wound, ...polyester, ...electrolytic, ...safety].map((row) =>
      row.map((field) => (typeof field === "number" ? Number(field.toFixed(3)) : field)),
    ),
  );
}

/** A small shop for restorers: fewer values, packs of five, cheap post. */
function tillick(): string {
  const films = OHMS.filter((_, i) => i % 2 === 0).map((ohms, i) => [
    `T${i + 100}`,
    `${code(ohms, "resistor")} 1W metal film, 5%, pack of 5`,
    0.7,
    i % 17 === 4 ? "sold out" : "",
  ]);
  const film = FILM_FARADS.map((farads, i) => [
    `T${i + 300}`,
    `${writeValue(farads, "capacitor")} 630V polyester film axial, 10%`,
    Number((0.48 + i * 0.045).toFixed(2)),
    "",
  ]);
  const electrolytic = [
    ["T401", "10uF 450V electrolytic axial", 1.2, ""],
    ["T402", "22uF 450V electrolytic axial", 1.65, ""],
    ["T403", "47uF 450V electrolytic axial", 2.4, ""],
    ["T404", "47uF 160V electrolytic axial", 0.85, ""],
    ["T405", "33uF 160V electrolytic axial", 0.75, ""],
    ["T406", "100uF 350V electrolytic axial", 3.1, "last ones"],
    ["T407", "33uF 63V electrolytic axial", 0.3, ""],
    ["T408", "100uF 63V electrolytic axial", 0.4, ""],
  ];
  const mica = [100, 120, 270, 390, 680].map((picofarads, i) => [
    `T${i + 500}`,
    `${picofarads}pF silver mica 500V 5%`,
    0.9,
    "",
  ]);
  return csv(["No.", "What", "Price", "Note"], [...films, ...film, ...electrolytic, ...mica]);
}

/** A dealer abroad: semicolons, decimal commas, another currency. */
function dunmarrow(): string {
  const rows = [
    ...FILM_FARADS.map((farads, i) => [
      `D-${i + 10}`,
      `Polypropylene film capacitor ${writeValue(farads, "capacitor")} 1000V 5% axial`,
      (0.7 + i * 0.06).toFixed(2).replace(".", ","),
      200 - i,
    ]),
    ...[3.3, 10, 12, 82, 100, 270, 390, 680, 1000].map((picofarads, i) => [
      `D-${i + 60}`,
      `Silver mica capacitor ${picofarads} pF 500V 5%`,
      (0.65 + i * 0.03).toFixed(2).replace(".", ","),
      60,
    ]),
    ["D-80", "Potentiometer 1M audio taper with switch", "3,90", 12],
    ["D-81", "Potentiometer 500K linear", "2,40", 20],
    ["D-82", "Potentiometer 500K audio taper with switch", "3,90", 9],
    ["D-83", "Potentiometer 1M linear", "2,40", 14],
    ["D-84", "Potentiometer 100K linear", "2,40", 14],
  ];
  return `${[["Article", "Text", "Price EUR", "In stock"], ...rows].map((row) => row.join(";")).join("\n")}\n`;
}

/** The three invented vendors of the sample, with their terms and their lists of this week. */
export const SAMPLE_VENDORS = [
  {
    vendor: "Corwen Supply",
    file: "corwen.csv",
    text: corwen(),
    shipping: 9.5,
    freeFrom: 75,
    currency: "USD",
  },
  {
    vendor: "Tillick Parts",
    file: "tillick.csv",
    text: tillick(),
    shipping: 4,
    freeFrom: null,
    currency: "USD",
  },
  {
    vendor: "Dunmarrow",
    file: "dunmarrow.csv",
    text: dunmarrow(),
    shipping: 12,
    freeFrom: null,
    currency: "EUR",
  },
] as const;

/** What the sample's currencies are worth: it counts in dollars. Invented rates. */
export const SAMPLE_RATES = [
  ["USD", 1],
  ["EUR", 1.1],
] as const;
