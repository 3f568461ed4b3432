import { attempt, type Kind, measuredValue, type Reading, readReading } from "../../core/index.js";
import type { Case } from "./case.js";
import type { Figure, Given } from "./given.js";
import { wordsOf } from "./label.js";

/** Labels under which a case says what the bench showed. */
const OF_THE_BENCH = /^(reading|reads?|meas|found|bench|shows?|ohmmeter|meter$|state|condition|result|continuity)/i;
const IN_PLACE = /not lifted|in.?circuit|in.?place|in the set|still connected|everything connected|unlifted/i;

/** Flags by their words, true where the part was in its place; "in circuit", "isLifted", "out_of_circuit". */
const FLAGS: readonly (readonly [words: RegExp, inPlace: boolean])[] = [
  [/\b(lifted|isolated|removed|desoldered|disconnected|out)\b/, false],
  [/\b(circuit|place|situ|connected)\b/, true],
];

/** Whether a reading was taken in place, by its flag or, without one, by the words of the context. */
function takenInPlace({ context }: Case, { rest }: Given): boolean {
  for (const [words, inPlace] of FLAGS) {
    const flag = Object.entries(rest).find(
      ([key, value]) => typeof value === "boolean" && words.test(wordsOf(key).join(" ")),
    );
    if (flag) return flag[1] === inPlace;
  }
  return IN_PLACE.test(context ?? "");
}

/** What a case says of the bench without a figure: open, short, jumps; null where its words say something else. */
export function stateRead(key: string, value: unknown, kind: Kind): Pick<Reading, "quantity" | "value"> | null {
  if (!OF_THE_BENCH.test(key) || typeof value !== "string") return null;
  const read = attempt(() => readReading(value, null, kind));
  return read === null || read.state === "value" ? null : { quantity: read.measured, value: measuredValue(read) };
}

/** The readings of a case: of the value, of insulation, leakage and ESR, and what the bench says in words. */
export function readingsOf(one: Case, given: Given, kind: Kind, figure: Figure): readonly Reading[] {
  const taken = { accuracy: figure("accuracy"), inPlace: takenInPlace(one, given) };
  const reading = (quantity: Reading["quantity"], value: number | null, atVolts?: number | null): readonly Reading[] =>
    value === null ? [] : [{ ...taken, quantity, value, ...(atVolts == null ? {} : { atVolts }) }];
  const own = kind === "capacitor" ? "capacitance" : "resistance";
  return [
    ...reading(own, figure("reading")),
    ...reading("insulation", figure("insulation"), figure("testVolts")),
    ...reading("leakage", figure("leakage"), figure("testVolts")),
    ...reading("ESR", figure("esr")),
    ...Object.entries(given.rest).flatMap(([key, value]) => {
      const read = stateRead(key, value, kind);
      return read ? [{ ...taken, ...read }] : [];
    }),
  ];
}
