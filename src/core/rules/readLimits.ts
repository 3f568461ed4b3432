/** TABLE: limits of a reading that do not follow from a part's own tolerance, by class. */

/** Ratios below and above the printed value, or the most that may be read, in ohms. */
export type ReadLimit = { readonly minus: number; readonly plus: number } | { readonly mostOhms: number };

/** Limits by class, as the tests of its row say them. Source: common practice. */
export const READ_LIMITS: Readonly<Record<string, ReadLimit>> = {
  elec_nonpolar: { minus: 0.2, plus: 0.2 },
  thermistor: { minus: 0.2, plus: 0.2 },
  transformer: { minus: 0.15, plus: 0.15 },
  pot_switch: { mostOhms: 0.5 },
  fuse: { mostOhms: 100 },
  lamp: { mostOhms: 100 },
};

/** Insulation that metal hardware and windings must have at 500 V to stay. Common practice. */
export const HARDWARE_OHMS = 10e6;

/** Leakage that a class may have at its working volts, in amperes, however little its place asks for. Source: SEEN 'Bumble Bee' article. */
export const LEAK_LIMITS: Readonly<Record<string, number>> = { paper_moulded: 3e-6 };
