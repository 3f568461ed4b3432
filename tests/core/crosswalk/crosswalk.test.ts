import { describe, expect, test } from "vitest";
import { crosswalk } from "../../../src/core/crosswalk/crosswalk.js";
import { readText } from "../read/readText.js";

/** An invented set in the factory's list and in an independent service folder. */
const FACTORY = `Unless otherwise specified: resistors 1/2 watt, ±10%, composition; capacitance in MMF.

SYMBOL    DESCRIPTION

TUNER
C101      Trimmer, ceramic, 5-30
C102      68, ±5%, ceramic, NPO, 500V
R101      1 MEG
R102      150
V101      Tube, 6AU6

MAIN CHASSIS
C201      .1 MFD, 200V, paper
C202      330, ±10%, mica, 500V
C203      .02 MFD, 400V, paper
C204      .02 MFD, 400V, paper
R201      2.2 MEG
R202      220, 1W
R203      Control, volume, 500K, audio taper
R204      470K
T201      Transformer, I.F., 455 KC
T202      Transformer, output
V201      Tube, 6AV6
V202      Tube, 6AQ5
R205      470K (early runs only)`;

const SERVICE = `Capacity: decimals are mfd, whole numbers mmfd. Resistance in ohms, carbon, unless noted.

                          CHASSIS
Item      Rating             Use
C-1       .1   200V paper    AVC
C-2       390  500V mica     Det. filter
C-3       .02  600V paper    Audio coupling
C-4       .02  400V paper    Audio coupling
R-1       500K audio pot     Volume
R-2       2.2 meg 1/2W       AVC
R-3       270  1W            Output cathode
R-4       470K 1/2W          Det. load
T-1       Output trans.      Audio
T-2       455 kc. I-F        I-F
V-2       6AV6               Det.
V-3       6AQ5               Output

                          TUNER UNIT
Item      Rating             Use
C-20      Trimmer 5-30       Osc.
C-21      68  NPO 5%         Osc.
R-20      1 meg 1/2W         Grid
R-21      150  1/2W          Cathode
V-1       6AU6               R-F`;

const TRUTH: Readonly<Record<string, string>> = {
  C101: "C-20", C102: "C-21", R101: "R-20", R102: "R-21", V101: "V-1", C201: "C-1", C202: "C-2", C203: "C-3", C204: "C-4",
  R201: "R-2", R202: "R-3", R203: "R-1", R204: "R-4", T201: "T-2", T202: "T-1", V201: "V-2", V202: "V-3",
}; // biome-ignore format: a table

describe("two documents of one set", () => {
  const walk = crosswalk(readText(FACTORY).parts, readText(SERVICE).parts);
  const pairOf = (name: string) => walk.pairs.find((pair) => pair.factory.designators.includes(name))!;

  test("no pair that is sure is wrong, and most are sure", () => {
    const sure = walk.pairs.filter((pair) => pair.confidence >= 0.8);
    for (const { factory, service } of sure)
      expect([factory.designators[0], service.designators[0]]).toEqual([
        factory.designators[0],
        TRUTH[factory.designators[0]!],
      ]);
    expect(sure.length).toBeGreaterThanOrEqual(14);
  });

  test("every disagreement is named, with the safer rating", () => {
    expect(pairOf("C202").disagree.map(({ field }) => field)).toEqual(["value"]);
    expect(pairOf("C203").disagree).toEqual([{ field: "volts", factory: 400, service: 600, safer: "service" }]);
    expect(pairOf("R202").disagree.map(({ field }) => field)).toEqual(["value"]);
  });

  test("tubes go by their types, whatever their numbers", () => {
    expect(pairOf("V202").service.designators).toEqual(["V-3"]);
  });

  test("a part of early runs alone is left to its own document, or unsure", () => {
    const pair = walk.pairs.find(({ factory }) => factory.designators.includes("R205"));
    expect(pair === undefined || pair.confidence < 0.8).toBe(true);
  });

  test("every part of both documents stands in it once", () => {
    expect(walk.pairs.length + walk.onlyFactory.length).toBe(readText(FACTORY).parts.length);
    expect(walk.pairs.length + walk.onlyService.length).toBe(readText(SERVICE).parts.length);
  });

  test("each pair says what speaks for it", () => {
    expect(pairOf("C201").because).toContain("the same value");
    expect(pairOf("V101").because).toContain("the same type number");
    expect(pairOf("T201").because.join()).toContain("both say if, 455");
  });

  describe("what the person said", () => {
    const said = (answer: "same" | "another") =>
      crosswalk(readText(FACTORY).parts, readText(SERVICE).parts, (a, b) =>
        a.designators[0] === "C203" && b.designators[0] === "C-4" ? answer : null,
      );
    const partnerOf = (name: string, found: ReturnType<typeof said>) =>
      found.pairs.find(({ factory }) => factory.designators[0] === name)!;

    test("stands against all signs, and the other part looks for another partner", () => {
      expect(partnerOf("C203", said("same"))).toMatchObject({ service: { designators: ["C-4"] }, confidence: 1 });
      expect(partnerOf("C204", said("same")).service.designators).toEqual(["C-3"]);
    });

    test("a pair that was refused is not proposed again", () => {
      const { pairs } = said("another");
      expect(
        pairs.filter((each) => each.factory.designators[0] === "C203" && each.service.designators[0] === "C-4"),
      ).toEqual([]);
    });
  });
});
