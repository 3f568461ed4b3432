/** TABLE: ladders of ratings and lists of values in which parts are stocked. */

/** Ratings that are sold, lowest first: watts or volts, by the name that rule rows use. Source: common practice. */
export const LADDERS: Readonly<Record<string, readonly number[]>> = {
  res_W: [0.125, 0.25, 0.5, 1, 2, 3, 5, 7, 10, 15, 20, 25, 50, 75, 100],
  film_V: [50, 63, 100, 160, 200, 250, 400, 630, 1000, 1250, 1600, 2000, 3000, 4000, 6300, 10000],
  elec_V: [6.3, 10, 16, 25, 35, 50, 63, 80, 100, 160, 200, 250, 315, 350, 400, 420, 450, 500],
  ceramic_V: [50, 100, 200, 500, 1000, 2000, 3000, 6000, 10000, 15000, 20000, 30000],
  mica_V: [100, 300, 500, 1000, 2500],
  safety_VAC: [250, 275, 300, 305, 310, 400, 440, 500],
  fuse_V: [32, 125, 250, 350, 600],
};

/** Electrolytics that are stocked, in farads. Source: common practice. */
export const ELECTROLYTIC_FARADS: readonly number[] = [
  1e-6, 2.2e-6, 3.3e-6, 4.7e-6, 6.8e-6, 10e-6, 15e-6, 18e-6, 22e-6, 33e-6, 39e-6, 47e-6, 56e-6, 68e-6, 82e-6, 100e-6,
  120e-6, 150e-6, 180e-6, 220e-6, 270e-6, 330e-6, 390e-6, 470e-6, 560e-6, 680e-6, 820e-6, 1000e-6, 1500e-6, 2200e-6,
  3300e-6, 4700e-6,
];

/** Wirewound values still sold besides the E24 ones, in ohms. Source: common practice. */
export const WIREWOUND_OHMS: readonly number[] = [
  75, 150, 250, 300, 350, 400, 500, 600, 750, 1000, 1500, 2000, 2500, 3000, 3500, 4000, 5000, 7500, 10000, 15000, 20000,
  25000,
];

/** One decade of the values in which controls are sold. Source: common practice. */
export const CONTROL_DECADE: readonly number[] = [1, 2.5, 5];
