/** TABLE: under which names a case gives a figure, and in what unit the name ends. */

/** Figures a case can give; `volts` is what stands across the part, `ratedVolts` what is printed on it. */
export type GivenName =
  | "nominal"
  | "tolerance"
  | "watts"
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
  | "stock"
  | "era";

/** Names by figure, tried in order on the key without its unit and in small letters. */
export const GIVEN_NAMES: readonly (readonly [RegExp, GivenName])[] = [
  [/^(ins|insulation)?(limit|min|need)$|^ins(ulation)?(limit|min|need)/, "insulationLimit"],
  [/^esr(limit|max)|^(limit|max)esr/, "esrLimit"],
  [/^leak(age)?(limit|max)|^(limit|max)leak/, "leakLimit"],
  [/^ins(ulation)?(read(ing)?)?$/, "insulation"],
  [/^leak(age)?(read(ing)?)?$/, "leakage"],
  [/^esr(read(ing)?)?$/, "esr"],
  [/^(reading|read|measured|reads)(ohms?|c|r|value)?$/, "reading"],
  [/^meter(acc(uracy)?)?$|^acc(uracy)?$/, "accuracy"],
  [/^(nominal|value|ohms|farads|r|c|printed)$/, "nominal"],
  [/^tol(erance)?$/, "tolerance"],
  [/^(power|watts?|rated(power|watts)|p)$/, "watts"],
  [/^rectifier(max|limit)?$|^max(rectifier|firstfilter)$|^rect(max|limit)$/, "rectifierFarads"],
  [
    /^(v?secondary|sec(ondary)?(v(olts)?|rms|half)*|half(sec(ondary)?|winding)?(v(olts)?|rms)*|winding(v(olts)?)?|ht(v(olts)?|winding)|vsec)$/,
    "windingVolts",
  ],
  [/^(peak(v(olts)?)?|warm.?up(peak|v(olts)?)*|vpeak|surge(v(olts)?)?)$/, "warmUpVolts"],
  [/^(v?max|maxv(olts)?)$/, "peakVolts"],
  [/^(vac|acv(olts)?|ac|ripple(v(olts)?)?|signal(v(olts)?)?)$/, "acVolts"],
  [/^(heaters?(v(olts)?|sum)*|string(v(olts)?)?|sumvf|vfsum|sumheaters?v?(olts)?|tubes?v(olts)?)$/, "stringVolts"],
  [/^(start)?drop(v(olts)?)?$|^dv$/, "dropVolts"],
  [
    /^(v?actual|boost(v(olts)?)?|actualv(olts)?|across(v(olts)?)?|v?across|working(v(olts)?)?|vwork(ing)?|vdc|dcv?(olts)?|steady(v(olts)?)?|bplus(v(olts)?)?|vb|vplate|plate(v(olts)?)?|screen(v(olts)?)?|vscreen|vdrop)$/,
    "volts",
  ],
  [/^(voltage|rated(v(olts)?)?|vrated|v|volts?|wv|wvdc|marked(v(olts)?)?)$/, "ratedVolts"],
  [/^load(current|i)?$|^i(load|dc)$/, "loadAmps"],
  [/^(i|amps?|current|ik|cathode(current)?|string(current|i)|iheater|heater(current|i)|ia)$/, "amps"],
  [/^pulse(peak|v(olts)?)*$/, "pulseVolts"],
  [/^(forward|fwd|vf)(drop|v(olts)?)*$/, "forwardVolts"],
  [/^(reverse|rev)(ohms?|r)?$/, "reverseOhms"],
  [/^plates$/, "plates"],
  [/^(r?grid(leak|r|ohms)?|rg|nextgrid)$/, "gridOhms"],
  [/^(stock|candidates|values)$/, "stock"],
  [/^(era|year)$/, "era"],
];

/** Units that a key may end in, with the factor to base units; ratios for percent. */
export const GIVEN_UNITS: readonly (readonly [RegExp, number])[] = [
  [/_?(pct|percent)$/i, 0.01],
  [/_?(uf|µf|mfd)$/i, 1e-6],
  [/_?nf$/i, 1e-9],
  [/_?(pf|mmf)$/i, 1e-12],
  [/_?(m_?ohms?|meg(ohms?)?|mΩ)$/i, 1e6],
  [/_?(k_?ohms?|kΩ)$/i, 1e3],
  [/_?(ohms?|Ω)$/i, 1],
  [/_?(ma)$/i, 1e-3],
  [/_?(ua|µa)$/i, 1e-6],
  [/(?<!pea)_?kV$|_kv$/, 1e3],
  [/_?mw$/i, 1e-3],
  [/_?(vac|vdc|volts?|v)$/i, 1],
  [/_?(watts?|w)$/i, 1],
  [/_?(amps?|a)$/, 1],
  [/(?<=[a-z])_?[AFHV]$/, 1],
  [/_f$/i, 1],
];

/** Names of settings that a case may change, by the key in small letters. */
export const GIVEN_SETTINGS: readonly (readonly [RegExp, string])[] = [
  [/^line(v(olts)?|now(v(olts)?)?|today(v(olts)?)?)?$|^v?mains$|^vline(now)?$/, "line_now_V"],
  [
    /^line(design|label|nominal|wound|documented)(v(olts)?)?$|^design(line)?(v(olts)?)?$|^label(v(olts)?)?$|^winding(on|line|design)(v(olts)?)?$/,
    "line_design_V",
  ],
  [/^(hz|linehz|hertz|freq(uency)?)$/, "line_hz"],
  [/^(later)excess/, "elec_later_excess_pct"],
  [/^(first)excess/, "elec_first_excess_pct"],
  [/^bias(excess)/, "bias_excess_pct"],
  [/^(grid)?shift(v(olts)?)?$|^(grid)shift/, "grid_shift_V"],
  [/^drift(limit|general)?$/, "r_drift_general_pct"],
  [/^policy$/, "policy"],
];
