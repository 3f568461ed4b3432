/** No two lines of a list are alike, and the language keeps what it found for a text that it has met. */
const DESCRIPTIONS: readonly ((number: number) => string)[] = [
  (number) => `${number}K 1/2 W ±10%`,
  (number) => `.0${number} mfd, 400 volts, paper`,
  (number) => `${number} ohms, 5 W wire wound`,
  (number) => `${number} mmf mica, 500 V`,
  (number) => `2.${number} meg`,
];

/** So many invented descriptions of parts, no two alike. */
export const descriptions = (count: number): readonly string[] =>
  Array.from({ length: count }, (_, i) => DESCRIPTIONS[i % DESCRIPTIONS.length]!(i + 1));

/** So many invented lines of a typed list, a part each. */
export const linesOfList = (count: number): readonly string[] =>
  descriptions(count).map((text, i) => `${text.includes("m") ? "C" : "R"}${i + 1}     ${text}`);

/** So many invented lines of a typed list, two parts side by side in each. */
export const linesOfPairs = (count: number): readonly string[] =>
  Array.from({ length: count }, (_, i) => `${`R${i + 1}`.padEnd(8)}${`${i + 1}K`.padEnd(16)}C${i + 1}   .05 mfd`);
