const LARGEST = 22;

/** Powers of ten from 1e-22 to 1e22, each the nearest number a computer can hold. */
const POWERS = Float64Array.from({ length: 2 * LARGEST + 1 }, (_, index) => Number(`1e${index - LARGEST}`));

/** A power of ten, for exponents from -22 to 22. @example powerOfTen(-3) // 0.001 */
export function powerOfTen(exponent: number): number {
  return POWERS[exponent + LARGEST]!;
}

/**
 * A whole number times a power of ten, the nearest number a computer can hold: 47 and -9 are 4.7e-8 and not a hair beside it.
 *
 * Powers from 1 to 1e22 are exact, so one multiplication or one division rounds once.
 *
 * @param whole A whole number below 2^53.
 * @param exponent From -22 to 22.
 * @example timesPowerOfTen(47, -9) === 47e-9 // true
 */
export function timesPowerOfTen(whole: number, exponent: number): number {
  return exponent < 0 ? whole / powerOfTen(-exponent) : whole * powerOfTen(exponent);
}
