/** TABLE: under which names a case gives a figure. */
import type { Measure } from "./givenUnits.js";

/** Figures a case can give; `volts` is what stands across the part, `ratedVolts` what is printed on it. */
export type GivenName =
  | "nominal"
  | "tolerance"
  | "watts"
  | "lostWatts"
  | "ratedVolts"
  | "volts"
  | "acVolts"
  | "peakVolts"
  | "warmUpVolts"
  | "windingVolts"
  | "amps"
  | "loadAmps"
  | "plates"
  | "dropVolts"
  | "stringVolts"
  | "rectifierFarads"
  | "gridOhms"
  | "reading"
  | "accuracy"
  | "insulation"
  | "insulationLimit"
  | "leakage"
  | "leakLimit"
  | "esr"
  | "esrLimit"
  | "pulseVolts"
  | "forwardVolts"
  | "reverseOhms"
  | "strikeVolts"
  | "startVolts"
  | "supplyVolts"
  | "celsius"
  | "roomLength"
  | "roomDiameter"
  | "tagSpan"
  | "stock"
  | "era";

/** `onlyWithUnit` where the words alone could as well name something else. */
type NameRow = readonly [words: RegExp, figure: GivenName, measures: readonly Measure[], onlyWithUnit?: true];

const OHMS = ["ohms"] as const;
const VOLTS = ["volts"] as const;
const AMPS = ["amps"] as const;
const METRES = ["metres"] as const;
const VALUE = ["ohms", "farads"] as const;

/**
 * Names by figure, tried in order on the key without its unit, in small letters and without strokes. A key's unit has to
 * measure what the row says; a key without a unit fits any row.
 */
export const GIVEN_NAMES: readonly NameRow[] = [
  [/^plates$/, "plates", []],
  [/^ins(ulation)?(limit|min|need\w*)|^(limit|min|need\w*)(ins\w*)?$/, "insulationLimit", OHMS],
  [/^esr(limit|max|new)|^(limit|max)esr/, "esrLimit", OHMS],
  [/^leak(age)?(limit|max)|^(limit|max)leak/, "leakLimit", AMPS],
  [/^(r?ins(ulation)?|insres\w*|megger|leak(age)?(resistance|r))(read(ing)?|measured)?$/, "insulation", OHMS],
  [/^(leak(age)?|ileak)(current|read(ing)?|measured)?$/, "leakage", AMPS],
  [/^esr(read(ing)?|measured)?$/, "esr", OHMS],
  [
    /^(reading|reads?|meas(ured)?|found|bench|endtoend|contact|lifted|incircuit|inplace)(reading|ohms?|resistance|cap(acitance)?|c|r|value)?$/,
    "reading",
    VALUE,
  ],
  [/^(meter)?(acc(uracy)?|err(or)?|uncertainty)$|^meter$/, "accuracy", ["ratio"]],
  [/^(reverse|rev)(ohms?|r|resistance)?$/, "reverseOhms", OHMS],
  [/^(r?(next)?grid(leak|r|ohms?|resistor)?|rg|nextgrid\w*)$/, "gridOhms", OHMS],
  [
    /^rect(ifier)?(max|limit)?$|^max(rect(ifier)?|firstfilter|c|cap\w*)$|^(limit|cmax|mostfarads)$/,
    "rectifierFarads",
    ["farads"],
  ],
  [/^tol(erance)?$|^marked(tol(erance)?)$/, "tolerance", ["ratio"]],
  [
    /^(nominal|value|ohms|farads|r|c|printed|marked|listed|sections?|elements?|taps?|resistance|capacitance|cold)(value|ohms)?$/,
    "nominal",
    VALUE,
  ],
  [
    /^(p?(loss|lost|dissipat\w*|burn\w*|actual|worst)p?|power(actual|lost)|p(diss|loss|act)\w*)$/,
    "lostWatts",
    ["watts"],
  ],
  [/^(power|watts?|w|p|wattage|(old|rated|printed|marked)(power|watts)?)$/, "watts", ["watts"]],
  [
    /^(v?secondary|sec(ondary)?(v(olts)?|rms|half)*|half(sec(ondary)?|winding)?(v(olts)?|rms)*|winding(v(olts)?)?|ht(v(olts)?|winding)|(v|ac)sec)$/,
    "windingVolts",
    VOLTS,
  ],
  [/^(pulse|flyback|kick)(peak|v(olts)?)*$/, "pulseVolts", VOLTS],
  [
    /^(peak(v(olts)?)?|(warm.?up|cold(start)?|switchon|noload|surge|startup)(peak|v(olts)?|b)*|v(peak|warmup|surge))$/,
    "warmUpVolts",
    VOLTS,
  ],
  [/^(v?max(v(olts)?)?|v?worst(case)?(v(olts)?)?)$/, "peakVolts", VOLTS],
  [/^(vac|acv?(olts)?|ripple(v(olts)?|rms)?|signal(v(olts)?)?)$/, "acVolts", VOLTS],
  [/^(forward|fwd|vf)(drop|v(olts)?)*$/, "forwardVolts", VOLTS],
  [
    /^(heaters?(v(olts)?|sum|string)*|string(v(olts)?)?|sumv?f|vfsum|(sum|total)(of)?heaters?v?(olts)?|filaments?(v(olts)?|sum)*|tubes?v?(olts)?)$/,
    "stringVolts",
    VOLTS,
  ],
  [/^(start)?drop(v(olts)?)?$|^dv$/, "dropVolts", VOLTS],
  [/^(strike|strikes(at)?|ignit\w*|fires?(at)?)(v(olts)?)?$/, "strikeVolts", VOLTS],
  [/^start(s|ing)?(at)?(v(olts)?)?$/, "startVolts", VOLTS],
  [/^(supply|battery)(v(olts)?)?$/, "supplyVolts", VOLTS],
  [
    /^(v?(actual|across|work(ing)?|applied|dc|steady|operating|there|plate|anode|screen|bplus|b|boost|cathode|drop|hv|eht|focus|node|run(ning)?)(v(olts)?|supply)?)$/,
    "volts",
    VOLTS,
  ],
  [
    /^(voltage|rated(v(olts?)?|voltage)?|vrated|v|volts?|wv|wvdc|marked(v(olts)?)?|printed(v(olts)?)?|volts?rating|ratingv?)$/,
    "ratedVolts",
    VOLTS,
  ],
  [/^(load|output)(current|i)?$|^i(load|dc|out)$/, "loadAmps", AMPS],
  [/^(i\w{0,3}|amps?|\w*current|(cathode|string|heater|plate|screen)i)$/, "amps", AMPS],
  [/^(cathodes?|string|heaters?|plates?|screen|drain|total|sections?|through)$/, "amps", AMPS, true],
  [/^(ambient|t(emp(erature)?)?(amb\w*)?|air|chassis(temp\w*)?|surroundings)$|celsius/, "celsius", ["celsius"]],
  [/^(stock|candidates|values(in)?stock|available)$/, "stock", VALUE],
  [/^(room|shell|chassis|space)?length$|^(room|shell|space)$/, "roomLength", METRES],
  [/^(room|shell|chassis|space)?dia(meter)?$/, "roomDiameter", METRES],
  [/^(tag|lead|lug)?(span|spacing)$/, "tagSpan", METRES],
  [/^(era|year)$/, "era", []],
];

/** Names of settings that a case may change, by the key in small letters. */
export const GIVEN_SETTINGS: readonly (readonly [RegExp, string])[] = [
  [
    /^line(v(olts)?|now(v(olts)?)?|today(v(olts)?)?|measured)?$|^v?mains(v(olts)?)?$|^vline(now)?$|^outlet$/,
    "line_now_V",
  ],
  [
    /^line(design|label|nominal|wound|documented)(v(olts)?)?$|^design(line)?(v(olts)?)?$|^label(v(olts)?)?$|^(winding|wound)(on|line|design|for)(v(olts)?)?$/,
    "line_design_V",
  ],
  [/^(hz|linehz|hertz|freq(uency)?|linefreq\w*)$/, "line_hz"],
  [/^(later)excess/, "elec_later_excess_pct"],
  [/^(first)excess/, "elec_first_excess_pct"],
  [/^bias(excess)/, "bias_excess_pct"],
  [/^(grid)?shift(v(olts)?)?$|^(grid)shift/, "grid_shift_V"],
  [/^(r)?drift(limit|general)?$/, "r_drift_general_pct"],
  [/^(loadmax|maxload|resload\w*)$/, "res_load_max"],
  [/^(film)?floor(v(olts)?)?$/, "film_floor_V"],
  [/^nearest(by)?$/, "nearest_by"],
  [/^guard(band)?$/, "guard"],
  [/^policy$/, "policy"],
];
