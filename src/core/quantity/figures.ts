const FIGURES = 6;

/** A number in at most six figures and never with an exponent. @example figures(0.0000005) // "0.0000005" */
export function figures(value: number): string {
  const text = String(Number(value.toPrecision(FIGURES)));
  return text.includes("e-") ? Number(text).toFixed(20).replace(/0+$/, "") : text;
}
