import { describe, expect, test } from "vitest";
import type { Offer } from "../../../src/core/index.js";
import { technologyRank } from "../../../src/core/index.js";
import { sameCode } from "../../../src/core/match/technology.js";
import { capacitorOf, offerOf, paperOf, ratingsOf } from "./makers.js";

describe("a technology is its words and what else it asks of an offer", () => {
  test.each<[string, string, Offer, number | null]>([
    ["metal film in any body", "metal_film", offerOf(), 0],
    [
      "a large body is at least as long as an old 1/2 W, 9.5 mm",
      "metal_film_large",
      offerOf({ lengthMetres: 0.009 }),
      null,
    ],
    ["11 mm is a large body", "metal_film_large", offerOf({ lengthMetres: 0.011 }), 0],
    ["an unstated length is judged by the watts", "metal_film_large", offerOf({ watts: 0.25 }), null],
    ["metal glaze bears more than 1000 V", "hv_metal_glaze", offerOf({ volts: 1600 }), 0],
    ["350 V is no metal glaze", "hv_metal_glaze", offerOf(), null],
    [
      "ceramic composition says so",
      "ceramic_comp",
      offerOf({ technology: ["composition"], description: "Ceramic comp. 47 R" }),
      0,
    ],
    ["plain composition is not ceramic", "ceramic_comp", offerOf({ technology: ["composition"] }), null],
    ["old stock of the same type", "same", offerOf({ newOldStock: true }), 0],
    ["a technology nobody knows fits nothing", "moonstone", offerOf(), null],
  ])("%s", (_why, id, offer, expected) => {
    expect(technologyRank(ratingsOf({ technologies: [id] }), offer)).toBe(expected);
  });

  const ceramic = (temperatureCoefficient: string | null) =>
    capacitorOf({ technology: ["ceramic"], temperatureCoefficient });
  test.each<[string, string, Offer, number | null]>([
    ["NP0 by its other name", "np0", ceramic("C0G"), 0],
    ["the original's own code", "np0", ceramic("N750"), 0],
    ["Z5U is no class 1", "np0", ceramic("Z5U"), null],
    ["no code is no class 1", "np0", ceramic(null), null],
    ["Z5U is class 2", "class2", ceramic("Z5U"), 0],
    ["N750 is not class 2", "class2", ceramic("N750"), null],
    ["Y2 is a Y part", "y_class", capacitorOf({ safetyClass: "X1/Y2" }), 0],
    ["X2 is not", "y_class", capacitorOf({ safetyClass: "X2" }), null],
    ["a Y part serves as X", "x_class", capacitorOf({ safetyClass: "Y2" }), 0],
    ["0.047 µF is no filter film", "film_dc", capacitorOf(), null],
    ["1 µF is", "film_dc", capacitorOf({ value: 1e-6 }), 0],
    [
      "a pulse rating may be an a.c. rating",
      "pp_film_foil",
      capacitorOf({ technology: ["polypropylene"], voltsKind: "ac" }),
      0,
    ],
    [
      "polypropylene without one is not pulse rated",
      "pp_film_foil",
      capacitorOf({ technology: ["polypropylene"] }),
      null,
    ],
    ["axial lytic wants both words", "alu_axial", capacitorOf({ technology: ["electrolytic"] }), null],
  ])("%s", (_why, id, offer, expected) => {
    expect(technologyRank(paperOf({ technologies: [id], temperatureCoefficient: "N750" }), offer)).toBe(expected);
  });

  test("no order of technologies takes anything", () => {
    expect(technologyRank(ratingsOf({ technologies: [] }), offerOf())).toBe(0);
  });

  test("NP0, NPO and C0G are one code (IEC 60384-8 and EIA names, from memory)", () => {
    expect(sameCode("NPO", "c0g") && sameCode("NP0", "C0G")).toBe(true);
    expect(sameCode("NP0", "N750")).toBe(false);
  });
});
