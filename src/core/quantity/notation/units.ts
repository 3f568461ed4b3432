/** What a unit word measures. */
export type Measure = "ohm" | "farad" | "henry" | "watt" | "volt" | "ampere" | "hertz" | "metre" | "ratio";

/**
 * A unit word: what it measures (null: a bare prefix such as k, whose measure the kind of part tells) and how many base
 * units one of it is. `capitalM` marks a bare M, which is thousand or million by the document's dialect.
 */
export type Unit = { readonly measure: Measure | null; readonly factor: number; readonly capitalM?: true };

/** What a unit measures where no part tells: of a bare prefix thousands and millions are ohms, the small ones farads. */
export const measureOf = ({ measure, factor }: Unit): Measure => measure ?? (factor >= 1 ? "ohm" : "farad");

type Row = readonly [words: string, measure: Measure | null, factor: number];

/** Spellings in lower case, dots and hyphens left out. In these trades a capital is never a prefix of its own: MF, MH, MW, MA are micro or milli. */
const ROWS: readonly Row[] = [
  ["ohm ohms ω Ω r e homs ohrns", "ohm", 1],
  ["kohm kohms kilohm kilohms kω kΩ kr", "ohm", 1e3],
  ["megohm megohms megohrns megaohm mohm mohms mω mΩ megohmes", "ohm", 1e6],
  ["milliohm milliohms", "ohm", 1e-3],
  ["k kilo", null, 1e3],
  ["meg megs mega", null, 1e6],
  ["f farad farads", "farad", 1],
  ["mf mfd mfds mfs uf ufd ufds µf μf µfd μfd microfarad microfarads microf", "farad", 1e-6],
  ["nf nfd nanofarad nanofarads", "farad", 1e-9],
  [
    "pf pfd mmf mmfd mmfds uuf uufd µµf μμf µµfd μμfd picofarad picofarads micromicrofarad micromicrofarads",
    "farad",
    1e-12,
  ],
  ["u µ μ", null, 1e-6],
  ["n", null, 1e-9],
  ["p mm uu µµ μμ", null, 1e-12],
  ["h hy henry henries henrys hys", "henry", 1],
  ["mh mhy millihenry millihenries millihenrys mhys", "henry", 1e-3],
  ["uh uhy µh μh µhy microh microhy microhenry microhenries microhenrys", "henry", 1e-6],
  ["nh", "henry", 1e-9],
  ["w watt watts", "watt", 1],
  ["mw milliwatt milliwatts", "watt", 1e-3],
  ["kw", "watt", 1e3],
  ["v volt volts vdc vdcw wvdc dcwv dcw piv prv wv wvolts vw vac vacw vdcwkg", "volt", 1],
  ["kv kvdc kilovolt kilovolts", "volt", 1e3],
  ["mv", "volt", 1e-3],
  ["a amp amps ampere amperes", "ampere", 1],
  ["ma milliampere milliamperes milliamp milliamps mils", "ampere", 1e-3],
  ["ua µa μa microampere microamperes", "ampere", 1e-6],
  ["cps cy cyc cycle cycles hz c", "hertz", 1],
  ["kc kcs khz kilocycle kilocycles", "hertz", 1e3],
  ["mc mcs mhz megacycle megacycles", "hertz", 1e6],
  ['in inch inches "', "metre", 0.0254],
  ["cm", "metre", 1e-2],
  ["% percent pct percentage", "ratio", 1e-2],
  ["ppm", "ratio", 1e-6],
];

/** Every spelling of a unit, in lower case without dots and hyphens; a bare m is told by `unitNamed`. */
export const UNITS: ReadonlyMap<string, Unit> = new Map(
  ROWS.flatMap(([words, measure, factor]) => words.split(" ").map((word) => [word, { measure, factor }] as const)),
);

const CAPITAL_M: Unit = { measure: null, factor: 1e6, capitalM: true };
const SMALL_M: Unit = { measure: null, factor: 1e6 };

/**
 * The unit that a word means, or undefined: "mfd", "MEG.", "K", "W.V.", "µF".
 *
 * A bare M is million here and marked `capitalM`: only the whole document tells whether it was thousand.
 */
export function unitNamed(word: string): Unit | undefined {
  if (word === "M") return CAPITAL_M;
  if (word === "m") return SMALL_M;
  return UNITS.get(word.toLowerCase().replace(/[.\-\s]/g, ""));
}
