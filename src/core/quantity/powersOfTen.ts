const LARGEST = 22;
const POWERS = Array.from({ length: LARGEST + 1 }, (_, exponent) => Number(`1e${exponent}`));

/**
 * A whole number times a power of ten, the nearest number a computer can hold: 47 and -9 are 4.7e-8 and not a hair beside it.
 *
 * Powers up to 1e22 are exact, so one multiplication or one division rounds once.
 *
 * @param whole A whole number below 2^53.
 * @param exponent From -22 to 22.
 * @example timesPowerOfTen(47, -9) === 47e-9 // true
 */
export function timesPowerOfTen(whole: number, exponent: number): number {
  return exponent < 0 ? whole / POWERS[-exponent]! : whole * POWERS[exponent]!;
}

/**
 * The number of the decade a value lies in: 0 for 1 to 9.99, -1 for 0.1 to 0.999.
 *
 * @param value Any positive value from 1e-20 to 1e20.
 * @example decadeOf(4_700) // 3
 */
export function decadeOf(value: number): number {
  const guess = Math.floor(Math.log10(value));
  if (timesPowerOfTen(1, guess) > value) return guess - 1;
  return timesPowerOfTen(1, guess + 1) <= value ? guess + 1 : guess;
}
