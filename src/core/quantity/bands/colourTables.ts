/** TABLE: what a colour means besides its figure, by kind of band. */
import type { Tolerance } from "../../part.js";
import type { Colour } from "./colours.js";

/** Figures that a colour may be looked up for. */
export type ColourTable<T> = Readonly<Partial<Record<Colour, T>>>;

/**
 * Powers of ten of the multiplier band.
 *
 * @see IEC 60062 (pink since its 2016 edition); RETMA REC-116 and MIL-R-11A for black to grey, gold and silver
 */
export const MULTIPLIER_POWERS: ColourTable<number> = {
  black: 0,
  brown: 1,
  red: 2,
  orange: 3,
  yellow: 4,
  green: 5,
  blue: 6,
  violet: 7,
  grey: 8,
  white: 9,
  gold: -1,
  silver: -2,
  pink: -3,
};

const percents = (table: ColourTable<number>): ColourTable<Tolerance> =>
  Object.fromEntries(
    Object.entries(table).map(([colour, percent]) => [colour, { minus: percent / 100, plus: percent / 100 }]),
  );

/** Tolerance of resistors. @see IEC 60062:2016; grey from memory; RETMA REC-116 for gold, silver, none */
export const RESISTOR_TOLERANCES = percents({
  brown: 1,
  red: 2,
  orange: 0.05,
  yellow: 0.02,
  green: 0.5,
  blue: 0.25,
  violet: 0.1,
  grey: 0.01,
  gold: 5,
  silver: 10,
  none: 20,
});

/** Temperature coefficient of resistors, sixth band, in millionths for each kelvin. @see IEC 60062:2016, from memory */
export const RESISTOR_PPM: ColourTable<number> = {
  black: 250,
  brown: 100,
  red: 50,
  orange: 15,
  yellow: 25,
  green: 20,
  blue: 10,
  violet: 5,
  grey: 1,
};

/** Failures in 1000 hours, fifth band of military composition resistors. @see MIL-R-39008; US Army OD1633 */
export const FAILURES: ColourTable<number> = { brown: 0.01, red: 0.001, orange: 0.0001, yellow: 0.00001 };

/** Tolerance of mica parts whose first dot is a figure. @see RMA code; figures 1 to 9 as percent from memory */
export const RMA_MICA_TOLERANCES = percents({
  brown: 1,
  red: 2,
  orange: 3,
  yellow: 4,
  green: 5,
  blue: 6,
  violet: 7,
  grey: 8,
  white: 9,
  gold: 5,
  silver: 10,
  none: 20,
});

/** Tolerance of mica parts whose first dot is the type. @see RETMA REC-115A and JAN-C-5, from memory */
export const JAN_MICA_TOLERANCES = percents({
  black: 20,
  brown: 1,
  red: 2,
  orange: 3,
  green: 5,
  white: 10,
  gold: 5,
  silver: 10,
});

/** Letter of a mica's temperature and drift class. @see MIL-C-5; RETMA REC-115A for A */
export const MICA_CHARACTERISTICS: ColourTable<string> = {
  black: "A",
  brown: "B",
  red: "C",
  orange: "D",
  yellow: "E",
  green: "F",
};

/** Tolerance of moulded paper tubulars. @see black and white: seen in use; the others from memory */
export const PAPER_TOLERANCES = percents({ black: 20, white: 10, silver: 10, gold: 5, green: 5, none: 20 });

/** Temperature coefficient of ceramic tubulars, first band. @see JAN-C-20 and EIA RS-198, from memory */
export const CERAMIC_PPM: ColourTable<number> = {
  black: 0,
  brown: -30,
  red: -80,
  orange: -150,
  yellow: -220,
  green: -330,
  blue: -470,
  violet: -750,
};

/** Multiplier of ceramics: grey and white make small values. @see EIA RS-198, from memory */
export const CERAMIC_POWERS: ColourTable<number> = {
  black: 0,
  brown: 1,
  red: 2,
  orange: 3,
  yellow: 4,
  grey: -2,
  white: -1,
};

/** Tolerance of ceramics above 10 pF. @see JAN-C-20 and EIA RS-198, from memory */
export const CERAMIC_TOLERANCES = percents({ black: 20, brown: 1, red: 2, orange: 2.5, green: 5, white: 10 });

/** Tolerance of ceramics up to 10 pF, in farads. @see JAN-C-20 and EIA RS-198, from memory */
export const CERAMIC_FARADS: ColourTable<number> = {
  black: 2e-12,
  brown: 0.1e-12,
  green: 0.5e-12,
  grey: 0.25e-12,
  white: 1e-12,
};
