import { expect, test } from "vitest";
import { besideLine } from "../../../src/start/cases/besideLine.js";
import { givenOf } from "../../../src/start/cases/given.js";
import { lineOf } from "../../../src/start/cases/lineOf.js";

const CAPACITOR = { kind: "capacitor", className: "paper_wax" } as const;

test.each<[Record<string, unknown>, Record<string, readonly number[]>, string]>([
  [{ V: 600 }, { ratedVolts: [600] }, "what the line prints, said again"],
  [{ V: 250 }, { volts: [250] }, "other volts than printed stand on it"],
  [{ uF: 0.062 }, { reading: [0.062e-6] }, "another value than printed is what it reads"],
  [{ ratedV: 400 }, { ratedVolts: [400] }, "a word outranks the line"],
])("%o beside .05 mf 600 V: %s", (given, expected) => {
  const line = lineOf("C1 .05 mf 600V", "capacitor");
  expect(Object.fromEntries(besideLine(givenOf(given, "", CAPACITOR, {}), line).figures)).toEqual(expected);
});
