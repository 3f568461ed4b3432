import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Network, networkValue } from "../../../src/core/compose/network.js";
import { readNetwork, writeNetwork } from "../../../src/core/compose/networkText.js";

const E12 = [100, 120, 150, 180, 220, 270, 330, 390, 470, 560, 680, 820];

const network: fc.Arbitrary<Network> = fc.letrec<{ network: Network }>((tie) => ({
  network: fc.oneof(
    { depthSize: "small", withCrossShrink: true },
    fc.constantFrom(...E12).map((part) => ({ part })),
    fc.array(tie("network"), { minLength: 2, maxLength: 3 }).map((series) => ({ series })),
    fc.array(tie("network"), { minLength: 2, maxLength: 3 }).map((parallel) => ({ parallel })),
  ),
})).network;

describe("a made-up value as text", () => {
  test.each([
    [{ series: [{ part: 1.6e6 }, { part: 1.6e6 }] }, "resistor", "1.6 M + 1.6 M"],
    [{ parallel: [{ part: 220e-12 }, { part: 30e-12 }] }, "capacitor", "220 pF || 30 pF"],
    [{ parallel: [{ series: [{ part: 1e5 }, { part: 22e3 }] }, { part: 1e6 }] }, "resistor", "(100 k + 22 k) || 1 M"],
  ] as const)("%j of a %s is drawn as %s", (network, kind, text) => {
    expect(writeNetwork(network, kind)).toBe(text);
  });

  test("what is drawn is read back as the same network", () => {
    fc.assert(
      fc.property(network, (network) => {
        expect(readNetwork(writeNetwork(network, "resistor"), "resistor")).toEqual(network);
      }),
    );
  });

  test.each([
    ["4k7+330", 5030, "no spaces"],
    ["10k | 10k", 5000, "one stroke"],
    ["10k ∥ 10k", 5000, "the sign of geometry"],
    ["((1k))", 1000, "brackets too many"],
    ["470K", 470_000, "one part"],
  ])("%s comes to %d ohms: %s", (text, ohms) => {
    expect(networkValue(readNetwork(text, "resistor"), "resistor")).toBeCloseTo(ohms, 6);
  });

  test.each([
    ["", "nothing"],
    ["1k +", "a part is missing"],
    ["1k + 2k || 3k", "joins mixed without brackets"],
    ["(1k + 2k", "a bracket is open"],
    ["1k) + 2k", "a bracket too many"],
    ["+ 1k", "a join before the first part"],
    ["1k + abc", "no value"],
  ])("%s is refused: %s", (text) => expect(() => readNetwork(text, "resistor")).toThrow("Can't read"));
});
