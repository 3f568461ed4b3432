import fc from "fast-check";
import { expect, test } from "vitest";
import { type Borne, bear, wholeOf } from "../../../src/core/compose/borne.js";
import { FORMS, JOINS, networkFrom } from "../../../src/core/compose/forms.js";
import { networkValue } from "../../../src/core/compose/network.js";
import { sharesOf } from "../../../src/core/compose/shares.js";

const ohms = fc.array(fc.double({ min: 1, max: 1e7, noNaN: true }), { minLength: 4, maxLength: 4 });
const form = fc.constantFrom(...Object.values(FORMS));

test("a form comes to what the network does that it makes, from either side", () => {
  fc.assert(
    fc.property(form, ohms, fc.constantFrom(...JOINS), (form, ohms, outer) => {
      const isSeries = outer === "series";
      const numbers = isSeries ? ohms : ohms.map((one) => 1 / one);
      const whole = wholeOf(form, numbers);
      const value = networkValue(networkFrom(form, outer, ohms), "resistor");
      expect((isSeries ? whole : 1 / whole) / value).toBeCloseTo(1, 9);
    }),
  );
});

test("its parts bear what those of the network do", () => {
  fc.assert(
    fc.property(form, ohms, (form, ohms) => {
      const borne: Borne = { added: [], through: [] };
      bear(form, ohms, borne);
      const shares = sharesOf(networkFrom(form, "series", ohms), "resistor");
      expect(borne.added).toHaveLength(shares.length);
      for (const [i, { volts, current }] of shares.entries()) {
        expect(borne.added[i]! / volts).toBeCloseTo(1, 9);
        expect(borne.through[i]! / current).toBeCloseTo(1, 9);
      }
    }),
  );
});
