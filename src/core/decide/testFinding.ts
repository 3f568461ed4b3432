import { figures } from "../quantity/figures.js";
import { writeValue } from "../quantity/writeValue.js";
import type { Finding } from "./reading.js";

/** What a bench test of a class without a value of its own can read; base units, null is not read. */
export type TestRead = {
  readonly forwardVolts?: number | null;
  readonly reverseOhms?: number | null;
  readonly strikeVolts?: number | null;
  readonly startVolts?: number | null;
  readonly supplyVolts?: number | null;
  readonly startShare?: number | null;
  readonly dissipation?: number | null;
  readonly caseOhms?: number | null;
};

type Test = { readonly text: string; readonly bad: boolean };

const forward = (volts: number, min: number, max: number): Test => ({
  text: `drops ${figures(volts)} V (${min} to ${max} V is sound)`,
  bad: volts < min || volts > max,
});

const reverse = (ohms: number, least: number): Test => ({
  text: `${writeValue(ohms, "resistor")} in reverse (more than ${writeValue(least, "resistor")} is sound)`,
  bad: ohms < least,
});

const strike = (volts: number): Test => ({
  text: `strikes at ${figures(volts)} V (55 to 90 V is sound for a small one)`,
  bad: volts < 55 || volts > 90,
});

const start = (at: string, share: number): Test => ({
  text: `starts at ${at} (below 80 % of its supply is sound)`,
  bad: share > 0.8,
});

const loss = (dissipation: number): Test => ({
  text: `loses ${figures(dissipation)} (below 0.002 is sound)`,
  bad: dissipation >= 0.002,
});

const toCase = (ohms: number): Test => ({
  text: `${writeValue(ohms, "resistor")} to its case (200 M or more is sound)`,
  bad: ohms < 200e6,
});

const known = (number: number | null | undefined): number is number => number !== null && number !== undefined;

/** Tests by class with their limits: common practice, as in the tests of the class's row. */
const TESTS: Readonly<Record<string, (read: TestRead) => readonly Test[]>> = {
  germanium_diode: ({ forwardVolts, reverseOhms }) => [
    ...(known(forwardVolts) ? [forward(forwardVolts, 0.2, 0.4)] : []),
    ...(known(reverseOhms) ? [reverse(reverseOhms, 50e3)] : []),
  ],
  silicon_rectifier: ({ forwardVolts, reverseOhms }) => [
    ...(known(forwardVolts) ? [forward(forwardVolts, 0.4, 0.7)] : []),
    ...(known(reverseOhms) ? [reverse(reverseOhms, 1e6)] : []),
  ],
  paper_bathtub: ({ caseOhms }) => (known(caseOhms) ? [toCase(caseOhms)] : []),
  mica_silver: ({ dissipation }) => (known(dissipation) ? [loss(dissipation)] : []),
  neon: ({ strikeVolts }) => (known(strikeVolts) ? [strike(strikeVolts)] : []),
  vibrator: ({ startVolts, supplyVolts, startShare }) => {
    if (known(startShare)) return [start(`${figures(startShare * 100)} %`, startShare)];
    if (!known(startVolts) || !known(supplyVolts)) return [];
    return [start(`${figures(startVolts)} V of ${figures(supplyVolts)} V`, startVolts / supplyVolts)];
  },
};

/**
 * What the test of a diode, neon lamp or vibrator says; null where the class has no such test or nothing of it was read.
 *
 * @param read `forwardVolts` at about a milliampere, lifted; `strikeVolts` behind a resistor; `startVolts` at a supply of
 * limited current, or `startShare` of it.
 * @example testFinding("germanium_diode", { forwardVolts: 0.9 })?.bad // true
 */
export function testFinding(className: string, read: TestRead): Finding | null {
  const tests = TESTS[className]?.(read) ?? [];
  if (tests.length === 0) return null;
  return { text: tests.map(({ text }) => text).join(", "), bad: tests.some(({ bad }) => bad) };
}
