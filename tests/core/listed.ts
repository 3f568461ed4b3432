import type { ListedPart } from "../../src/core/index.js";

/** A listed part that states nothing but what a test gives it. */
export function listed(stated: Partial<ListedPart> = {}): ListedPart {
  return {
    lines: [1],
    printed: "",
    valueText: "",
    section: null,
    designators: ["R1"],
    kind: "resistor",
    value: null,
    valueState: "stated",
    valueMin: null,
    valueMax: null,
    tolerance: null,
    watts: null,
    volts: null,
    construction: null,
    dielectric: null,
    temperatureCoefficient: null,
    taper: null,
    quantity: 1,
    sections: null,
    inner: null,
    sameAs: null,
    partOf: null,
    stockNumber: null,
    use: null,
    from: {},
    warnings: [],
    ...stated,
  };
}
