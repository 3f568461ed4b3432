import { expect, test } from "vitest";
import { DIAL_LAMPS, dialLamp } from "../../../src/core/index.js";

test.each([
  // type, alike, why (published handbook tables, from memory)
  [47, [40], "brown bead, 0.15 A: bayonet and screw"],
  [44, [46], "blue bead, 0.25 A"],
  [55, [], "0.4 A has no twin here"],
])("type %d has the twins %j: %s", (type, alike) => expect(dialLamp(type).alike).toEqual(alike));

test("twins differ in nothing but their base, and are each other's", () => {
  for (const lamp of DIAL_LAMPS) {
    for (const twin of dialLamp(lamp.type).alike) {
      expect(dialLamp(twin).lamp.amps).toBe(lamp.amps);
      expect(dialLamp(twin).alike).toContain(lamp.type);
    }
  }
});

test("an unknown number is refused with those that are known", () => {
  expect(() => dialLamp(1)).toThrow("Lamps are 40, 41");
});

test.each(["47", "#47", "No. 47", "type 47"])("a lamp is known as %s", (written) => {
  expect(dialLamp(written).lamp.type).toBe(47);
});
