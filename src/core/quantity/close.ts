/** Whether two numbers are the same but for rounding: within one part in 10^9 of the larger. @example close(0.1 + 0.2, 0.3) // true */
export function close(a: number, b: number, within = 1e-9): boolean {
  return Math.abs(a - b) <= within * Math.max(Math.abs(a), Math.abs(b));
}
