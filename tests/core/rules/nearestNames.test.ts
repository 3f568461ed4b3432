import { describe, expect, test } from "vitest";
import { DEFAULTS_IN_FORCE, ruleFor, whatToFit } from "../../../src/core/index.js";
import { nearestNames } from "../../../src/core/rules/nearestNames.js";

describe("a name that no row has", () => {
  test("is answered with the nearest ones: what begins so first, then what is spelled alike", () => {
    const names = ["elec_single", "elec_multi", "elec_can_insulated", "paper_wax", "fuse"];
    expect(nearestNames("elec_can", names)[0]).toBe("elec_can_insulated");
    expect(nearestNames("paperwax", names)).toEqual(["paper_wax"]);
    expect(nearestNames("xyz", names)).toEqual([]);
  });

  test("says them in the message, for a type and for a use, in a rule and in a cell", () => {
    expect(() => ruleFor(DEFAULTS_IN_FORCE, "elec_can", null)).toThrow(/such as elec_can_insulated/);
    expect(() => ruleFor(DEFAULTS_IN_FORCE, "fuse", "plate_lod")).toThrow(/such as plate_load/);
    expect(() => whatToFit({ listed: "C1 .05", type: "paper_wx", inForce: DEFAULTS_IN_FORCE })).toThrow(/paper_wax/);
  });
});
