import { expect, test } from "vitest";
import { uncertaintyOf } from "../../../src/core/index.js";

test("1 % and two counts of 100 ohms on 470 k are 4.9 k", () => {
  expect(uncertaintyOf({ reading: 470_000, share: 0.01, counts: 2, resolution: 100 })).toBeCloseTo(4_900, 9);
});

test("leads count where ohms are few", () => {
  expect(uncertaintyOf({ reading: 10, share: 0.01, leadOhms: 0.2 })).toBeCloseTo(0.3, 12);
});
