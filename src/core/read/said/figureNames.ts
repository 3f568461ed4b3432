/** TABLE: by which words and units a figure of a part, of its place or of the bench is told. */
import type { FigureName, SaidMeasure } from "./statement.js";

const idea = (words: string): ReadonlySet<string> => new Set(words.split(" "));

/** Words of one idea, as the trade writes them; a word may stand for several ideas. Common practice. */
export const IDEAS = {
  insulation: idea("ins insulation insres isolation megger meggered rins"),
  leak: idea("leak leaks leakage leaked leaking ileak"),
  esr: idea("esr"),
  read: idea(
    "read reads reading readings meas measured measures measurement measurements found bench shows contact lifted",
  ),
  accuracy: idea("acc accuracy error err uncertainty meter"),
  limit: idea("limit limits max most maximum least min minimum need needs needed allowed allows new"),
  highest: idea("max vmax maximum worst worstcase highest"),
  reverse: idea("rev reverse reversed backwards rrev"),
  forward: idea("fwd forward vf vfwd way"),
  strike: idea("strike strikes striking ignites ignition fires lights"),
  start: idea("start starts starting startup"),
  supply: idea("supply battery"),
  grid: idea("grid rg gridleak"),
  rectifier: idea("rect rectifier rectifiers"),
  heater: idea("heater heaters filament filaments tube tubes vfsum"),
  string: idea("string strings"),
  winding: idea("winding secondary sec half vsec transformer"),
  line: idea("line mains outlet vline vmains now today"),
  design: idea("design designed label nameplate documented wound"),
  pulse: idea("pulse pulses flyback kick kicks retrace spike spikes transient transients vpulse"),
  peak: idea("peak peaks pk vpeak"),
  warmUp: idea("warmup warm cold coldstart switchon noload surge"),
  ac: idea("ac vac ripple vripple signal rms"),
  load: idea("load loads output iload"),
  drop: idea("drop drops dropped dropping dv"),
  shift: idea("shift shifts moved"),
  case: idea("case can shell chassis bracket hardware"),
  dissipation: idea("df d dissipation dissipationfactor tand tandelta"),
  plates: idea("plates plate"),
  tolerance: idea("tol tolerance"),
  lost: idea("lost loss dissipates dissipated dissipation pdiss ploss burns burned burnt avg average actual worst"),
  across: idea("across on there actual working work applied dc vdc steady operating running run drop"),
  node: idea("plate anode screen bplus b cathode node end side top bottom pin tap ht supply vb vp"),
  high: idea("boost vboost eht hv focus"),
  test: idea("test tested tester testing"),
  current: idea("i current currents ik ip ia ib ig isc through draws"),
  air: idea("ambient air temp temperature tamb surroundings chassis celsius heat"),
  ends: idea("end ends across track"),
  stock: idea("stock stocked candidates available"),
  length: idea("length long"),
  diameter: idea("dia diameter"),
  span: idea("span spacing"),
  room: idea("room shell chassis space"),
  era: idea("era year"),
  hertz: idea("hz hertz freq frequency cycles"),
  rated: idea("rated rating voltage wattage power printed marked listed wv wvdc"),
  value: idea("nominal value printed marked listed rated documented original resistance capacitance cold r c dcr"),
  pieces: idea("section sections element elements tap taps"),
  range: idea("range scale fullscale"),
} as const;

export type Idea = keyof typeof IDEAS;

/**
 * One way to tell a figure: ideas that all have to stand by it (none: any words), and what it measures (none: a count).
 *
 * `of` are kinds or classes of part whose figure it can be. What else it needs: `unit`, that a label writes it, for the
 * words could as well name something else; `text`, a free text, or a label whose other words nobody knows; `alone`, a free
 * text with no other word beside it; `label`, a label with its unit, for a sentence would tell another thing: what an old
 * stack drops today is no figure of it.
 */
export type NameRow = {
  readonly figure: FigureName;
  readonly ideas: readonly Idea[];
  readonly measures: readonly SaidMeasure[];
  readonly of?: readonly string[];
  readonly needs?: "unit" | "text" | "alone" | "label";
};

const OHM = ["ohm"] as const;
const VOLT = ["volt"] as const;
const AMPERE = ["ampere"] as const;
const WATT = ["watt"] as const;
const RATIO = ["ratio"] as const;
const FARAD = ["farad"] as const;
const METRE = ["metre"] as const;
const VALUE = ["ohm", "farad", "henry"] as const;

const DIODES = ["silicon_rectifier", "germanium_diode"];
/** Classes that stand in a string of heaters; any other string of a resistor is one of resistors. */
const DROPPERS = ["ballast", "line_cord_r", "wirewound", "metal_clad_ww"];

type Written = readonly [
  figure: FigureName,
  ideas: string,
  measures: readonly SaidMeasure[],
  of?: readonly string[],
  needs?: NameRow["needs"],
];

/** Ways to tell a figure, the most telling first. */
const ROWS: readonly Written[] = [
  ["startShare", "start", RATIO],
  ["accuracy", "accuracy", RATIO],
  ["dissipation", "dissipation", RATIO, ["capacitor"]],
  ["tolerance", "tolerance", RATIO],
  ["insulationLimit", "insulation limit", OHM],
  ["insulationLimit", "limit", OHM, ["capacitor"], "unit"],
  ["esrLimit", "esr limit", OHM],
  ["leakLimit", "leak limit", AMPERE],
  ["testVolts", "insulation", VOLT, undefined, "unit"],
  ["testVolts", "leak", VOLT, undefined, "unit"],
  ["testVolts", "test", VOLT],
  ["caseOhms", "case", OHM, ["capacitor"], "unit"],
  ["testVolts", "read", VOLT, ["capacitor"], "label"],
  ["insulation", "insulation", OHM],
  ["insulation", "leak", OHM, undefined, "unit"],
  ["leakage", "leak", AMPERE],
  ["esr", "esr", OHM],
  ["reverseOhms", "reverse", OHM],
  ["stringVolts", "forward", VOLT, ["ballast", "line_cord_r"]],
  ["forwardVolts", "forward", VOLT],
  ["forwardVolts", "drop", VOLT, DIODES],
  ["gridOhms", "grid", OHM, ["capacitor"]],
  ["rectifierFarads", "rectifier", FARAD],
  ["rectifierFarads", "limit", FARAD, undefined, "unit"],
  ["insulation", "read", OHM, ["capacitor"], "unit"],
  ["reading", "read", VALUE],
  ["reading", "ends", OHM, ["potentiometer"], "text"],
  ["stock", "stock", VALUE],
  ["pulseVolts", "pulse", VOLT],
  ["strikeVolts", "strike", VOLT],
  ["startVolts", "start", VOLT, ["vibrator", "other"]],
  ["warmUpVolts", "warmUp", VOLT, undefined, "unit"],
  ["warmUpVolts", "peak", VOLT],
  ["peakVolts", "highest", VOLT, undefined, "unit"],
  ["windingVolts", "winding", VOLT],
  ["stringVolts", "heater", VOLT, ["resistor"]],
  ["stringVolts", "string", VOLT, DROPPERS, "unit"],
  ["lineDesignVolts", "line design", VOLT],
  ["lineVolts", "line", VOLT],
  ["lineHertz", "line", ["hertz"], undefined, "unit"],
  ["lineHertz", "hertz", ["hertz"]],
  ["dropVolts", "drop", VOLT, ["selenium"], "label"],
  ["gridShiftVolts", "shift", VOLT, ["capacitor"]],
  ["gridShiftVolts", "drop", VOLT, ["capacitor"]],
  ["acVolts", "ac", VOLT],
  ["supplyVolts", "supply", VOLT, ["vibrator", "other"]],
  ["volts", "across", VOLT],
  ["nodeVolts", "node", VOLT, undefined, "unit"],
  ["volts", "high", VOLT],
  ["ratedVolts", "rated", VOLT],
  ["lostWatts", "lost", WATT],
  ["watts", "rated", WATT],
  ["loadAmps", "load", AMPERE, undefined, "unit"],
  ["amps", "current", AMPERE],
  ["amps", "heater", AMPERE, undefined, "unit"],
  ["amps", "string", AMPERE, undefined, "unit"],
  ["amps", "node", AMPERE, undefined, "unit"],
  ["celsius", "air", ["celsius"]],
  ["roomLength", "length", METRE],
  ["roomDiameter", "diameter", METRE],
  ["tagSpan", "span", METRE],
  ["roomLength", "room", METRE, undefined, "unit"],
  ["plates", "plates", []],
  ["nominal", "value", VALUE],
  ["nominal", "pieces", VALUE],
  ["era", "era", []],
  ["insulation", "", OHM, ["capacitor"], "alone"],
  ["reading", "", FARAD, ["capacitor"], "alone"],
  ["celsius", "", ["celsius"], undefined, "text"],
  ["volts", "", VOLT, undefined, "text"],
  ["amps", "", AMPERE, undefined, "text"],
];

/** The ways to tell a figure as rows, the most telling first. */
export const FIGURE_NAMES: readonly NameRow[] = ROWS.map(([figure, ideas, measures, of, needs]) => ({
  figure,
  ideas: ideas.split(" ").filter((name) => name !== "") as Idea[],
  measures,
  ...(of ? { of } : {}),
  ...(needs ? { needs } : {}),
}));
