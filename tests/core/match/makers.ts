import type { Offer, Ratings } from "../../../src/core/index.js";

/** An invented metal film resistor, 470 k ±5 % 1 W; what differs is given. */
export const offerOf = (differs: Partial<Offer> = {}): Offer => ({
  id: differs.id ?? differs.stockNumber ?? "C-1",
  vendor: "corwen",
  row: 1,
  stockNumber: "C-1",
  description: "resistor",
  kind: "resistor",
  value: 470_000,
  valueMin: null,
  valueMax: null,
  tolerance: { minus: 0.05, plus: 0.05 },
  watts: 1,
  volts: 350,
  voltsKind: null,
  technology: ["metal-film"],
  safetyClass: null,
  temperatureCoefficient: null,
  taper: null,
  withSwitch: false,
  sections: null,
  newOldStock: false,
  measured: null,
  pack: 1,
  minimum: 1,
  multiple: 1,
  stock: null,
  breaks: [[1, 0.1]],
  currency: null,
  status: "in-stock",
  lengthMetres: null,
  diameterMetres: null,
  warnings: [],
  ...differs,
});

/** An invented film capacitor, 0.047 µF ±10 % 630 V polyester. */
export const capacitorOf = (differs: Partial<Offer> = {}): Offer =>
  offerOf({
    kind: "capacitor",
    value: 4.7e-8,
    tolerance: { minus: 0.1, plus: 0.1 },
    watts: null,
    volts: 630,
    technology: ["polyester", "film"],
    ...differs,
  });

/** What a 470 k ±20 % half-watt composition resistor asks of its successor: 1 W, 300 V, metal film before metal oxide. */
export const ratingsOf = (differs: Partial<Ratings> = {}): Ratings => ({
  kind: "resistor",
  wanted: 470_000,
  window: { min: 376_000, max: 564_000 },
  old: { min: 376_000, max: 564_000 },
  gate: "nominal",
  leastWatts: 0.5,
  wantWatts: 1,
  mostWatts: null,
  leastVolts: 300,
  wantVolts: null,
  voltsKind: "dc",
  tolerance: null,
  technologies: ["metal_film", "metal_oxide"],
  safety: null,
  temperatureCoefficient: null,
  taper: null,
  room: null,
  aim: null,
  rejected: [],
  because: [],
  ...differs,
});

/** What a .05 µF ±20 % 400 V wax paper capacitor asks. */
export const paperOf = (differs: Partial<Ratings> = {}): Ratings =>
  ratingsOf({
    kind: "capacitor",
    wanted: 5e-8,
    window: { min: 4e-8, max: 6e-8 },
    old: { min: 4e-8, max: 6e-8 },
    leastWatts: null,
    wantWatts: null,
    leastVolts: 400,
    wantVolts: 630,
    technologies: ["polyester", "polypropylene"],
    ...differs,
  });
