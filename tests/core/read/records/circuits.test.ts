import { expect, test } from "vitest";
import { circuitOf, circuitsOf } from "../../../../src/core/read/records/circuits.js";

const noted = (text: string) => circuitsOf([{ lines: [1], text, section: null }]);

test.each([
  ["PREFIX  A = INPUT STAGE,  B = OUTPUT STAGE", "B-R1", "OUTPUT STAGE", "a table of prefixes"],
  ["Prefix 1 refers to circuit A1, prefix 2 to A2.", "2-C3", "A2", "a sentence"],
  ["", "A-R193", "A", "nothing said: the prefix itself"],
])("%s: %s stands in %s: %s", (note, name, section) => {
  expect(circuitOf([name], noted(note)).section).toBe(section);
});
