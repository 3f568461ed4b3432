/** Number formats with their unit; at least one decimal where halves and quarters are met, for a bare point would be left standing. */
export const WATTS = '0.0##" W"';
export const VOLTS = '0.0" V"';
export const AMPS = '0.0###" A"';
/** A size in base units, for sorting and calculating, as the host shows numbers: not every host knows formats with an exponent. */
export const SIZE = null;
export const PIECES = "0";
export const MONEY = "0.00";
export const PRICE = "0.0000";
export const RATIO = "0%";
export const MILLIMETRES = '0.0" mm"';
export const CELSIUS = '0" °C"';
