/** Number formats with their unit; at least one decimal where halves and quarters are met, for a bare point would be left standing. */
export const WATTS = '0.0##" W"';
export const VOLTS = '0.0" V"';
export const AMPS = '0.0###" A"';
/**
 * A size in base units, for sorting and calculating: with all its decimals, for hosts round a picofarad to 0 where they are
 * left the choice, and not every host knows formats with an exponent.
 */
export const SIZE = "0.0############";
export const PIECES = "0";
export const MONEY = "0.00";
export const PRICE = "0.0000";
export const RATIO = "0%";
export const MILLIMETRES = '0.0" mm"';
export const CELSIUS = '0" °C"';

/** The units of columns that hold amounts. */
export const IN_VOLTS = { measure: "volt", name: "V", inBase: 1 } as const;
export const IN_WATTS = { measure: "watt", name: "W", inBase: 1 } as const;
export const IN_AMPS = { measure: "ampere", name: "A", inBase: 1 } as const;
export const IN_MILLIMETRES = { measure: "metre", name: "mm", inBase: 0.001 } as const;
