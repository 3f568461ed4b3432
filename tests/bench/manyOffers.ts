import type { Offer, Ratings } from "../../src/core/index.js";

/** Numbers that look random and are the same in every run: a linear congruential generator (Knuth's constants). */
function numbers(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

const E24 = [10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91];
const RESISTORS = ["metal-film", "metal-oxide", "carbon-film", "composition", "wirewound"];
const CAPACITORS = [
  ["film", "polypropylene"],
  ["film", "polyester"],
  ["ceramic", "disc"],
  ["silver-mica"],
  ["electrolytic"],
];
const BODIES = ["axial", "radial"];
const TOLERANCES = [0.01, 0.02, 0.05, 0.1, 0.2].map((ratio) => ({ minus: ratio, plus: ratio }));

/** So many invented offers: half resistors, half capacitors, in the values, ratings and technologies that lists have. */
export function manyOffers(count: number): Offer[] {
  const below = numbers(1);
  const of = <T>(list: readonly T[]): T => list[below(list.length)]!;
  return Array.from({ length: count }, (_, i) => {
    const isResistor = below(2) === 0;
    const value = of(E24) * 10 ** (isResistor ? below(6) : below(6) - 12);
    const technology = isResistor ? [of(RESISTORS), "axial"] : [...of(CAPACITORS), of(BODIES)];
    return {
      id: `O-${i}`, vendor: "many", row: i + 1, stockNumber: `O-${i}`, description: "", kind: isResistor ? "resistor" : "capacitor",
      value, valueMin: null, valueMax: null, tolerance: of(TOLERANCES), watts: isResistor ? of([0.25, 0.5, 1, 2, 3, 5]) : null,
      volts: isResistor ? of([null, 250, 350, 500]) : of([50, 100, 250, 400, 450, 630, 1000]), voltsKind: null, technology,
      safetyClass: null, temperatureCoefficient: null, taper: null, withSwitch: false, sections: null, newOldStock: below(20) === 0,
      measured: null, pack: of([1, 1, 10]), minimum: 1, multiple: 1, stock: of([null, 0, 25, 4000]),
      breaks: [[1, (below(500) + 1) / 100]], currency: null, status: "in-stock", lengthMetres: null, diameterMetres: null, warnings: [],
    }; // biome-ignore format: a table
  });
}

/** What so many old parts ask: composition resistors and paper capacitors of the values that lists have. */
export function manyRatings(count: number): Ratings[] {
  const below = numbers(2);
  const of = <T>(list: readonly T[]): T => list[below(list.length)]!;
  return Array.from({ length: count }, () => {
    const isResistor = below(2) === 0;
    const wanted = of([1, 2.2, 2.5, 3.3, 4.7, 5, 6.8, 8.2]) * 10 ** (isResistor ? 2 + below(4) : below(4) - 10);
    const span = { min: wanted * 0.9, max: wanted * 1.1 };
    const watts = isResistor ? of([0.5, 1, 2]) : null;
    return {
      kind: isResistor ? "resistor" : "capacitor", wanted, window: span, old: { min: wanted * 0.8, max: wanted * 1.2 }, gate: "nominal",
      leastWatts: watts, wantWatts: watts, mostWatts: null, leastVolts: isResistor ? of([null, 250, 350]) : of([100, 200, 400, 600]),
      wantVolts: null, voltsKind: "dc", tolerance: null, safety: null, temperatureCoefficient: null, taper: null, room: null, aim: null,
      technologies: isResistor ? ["metal_film", "metal_oxide", "carbon_film"] : ["polypropylene", "polyester"], rejected: [], because: [],
    }; // biome-ignore format: a table
  });
}
