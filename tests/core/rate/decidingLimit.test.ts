import { describe, expect, test } from "vitest";
import type { ListedPart, Place } from "../../../src/core/index.js";
import { partOf, rate } from "./partOf.js";

const HALF_WATT = { value: 470e3, watts: 0.5 };
const WET = { value: 20e-6, volts: 350 };

describe("the limit that decides a new part", () => {
  // Bodies as in the table of bodies' volts: metal film of 1/2 W bears 250 V, of 1 W 350 V, of 2 W 500 V.
  test.each<[string, string | null, Partial<ListedPart>, Partial<Place>, RegExp | null, string]>([
    ["carbon_comp", "plate_load", HALF_WATT, { volts: 250 }, /^250 V would be all of a 1\/2 W body's limit$/, "volts"],
    ["carbon_comp", null, HALF_WATT, { volts: 225 }, /^225 V would be 90 % of a 1\/2 W body's limit$/, "volts, less"],
    [
      "carbon_comp",
      null,
      { value: 1e6, watts: 0.5 },
      { volts: 275 },
      /^275 V is more than a 1\/2 W body's 250 V$/,
      "beyond",
    ],
    [
      "carbon_comp",
      null,
      { value: 10e3, watts: 0.5 },
      { volts: 60 },
      /^it burns 0.36 W, 0.72 W at 50 % load$/,
      "watts",
    ],
    ["carbon_comp", null, HALF_WATT, {}, /^watts it burns are not known/, "nothing is known of the place"],
    ["fusible", null, { value: 7.5, watts: 5 }, {}, /^5 W as it was, neither less nor more$/, "what must open"],
    ["bleeder", null, { value: 4.7e6, watts: 1 }, { volts: 900 }, /^no one body bears 900 V: 3 equal ones/, "a string"],
    ["elec_single", "later_filter", WET, { warmUpVolts: 375 }, /^the warm-up peak is 375 V/, "the peak"],
    [
      "elec_single",
      "first_filter",
      WET,
      { rectifierFarads: 24e-6 },
      /^the rectifier's sheet allows 24 µF/,
      "the rectifier",
    ],
    [
      "paper_wax",
      null,
      { value: 5e-8, volts: 400 },
      {},
      /^400 V is sold as 630 V, 0.05 µF is sold as 0.047 µF$/,
      "stock",
    ],
    ["paper_wax", null, { value: 1e-7, volts: 630 }, {}, null, "bought as it was"],
    ["paper_wax", "line_to_chassis", { value: 1e-8 }, {}, /^0.01 µF passes 0.464 mA/, "the line's current"],
    ["fuse", null, { printed: "1/4 A" }, { volts: 300 }, /^350 V or more breaks the arc$/, "a fuse's volts"],
  ])("a %s as %s, %o at %o: %s (%s)", (className, role, stated, place, said) => {
    const { decides } = rate(partOf(className, role, stated), place);
    if (said === null) expect(decides).toBeNull();
    else expect(decides).toMatch(said);
  });
});
