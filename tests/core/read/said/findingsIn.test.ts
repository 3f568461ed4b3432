import { describe, expect, test } from "vitest";
import { findingsIn } from "../../../../src/core/index.js";

describe("what is seen, heard or smelt on a part, in plain words", () => {
  test.each<[string, readonly boolean[], string]>([
    ["insulation to case bad", [true], "the bench's plain word"],
    ["crackles with the tube pulled", [true], "a sound"],
    ["blackened, meter shows OL", [true, true], "a look and a meter"],
    ["second section open", [true], "one section speaks for the can"],
    ["reads 2480 ohms lifted; no green at its ends", [], "what is denied tells nothing"],
    ["sound rubber, no nicks", [false], "sound to the eye"],
    ["green wire to the chassis, short leads", [], "a colour and a length are no findings"],
    ["0.61 V one way, open the other way", [], "a diode opens in reverse"],
    ["cracked body; works", [true, false], "each clause speaks for itself"],
  ])("%s", (text, bad) => {
    expect(findingsIn(text).map((found) => found.bad)).toEqual(bad);
  });
});
