import { complete, DEFAULTS_IN_FORCE, type ListedPart, type Part, stagesOfPart } from "../../src/core/index.js";
import { listed } from "../core/listed.js";
import type { Bench } from "./measure.js";

const VALUES = [470e3, 47e3, 1e3, 250, 2.2e6];
const FARADS = [5e-8, 1e-8, 2.5e-10, 16e-6, 1e-7];
const USES = ["plate load", "screen dropping", "", "grid leak"];
const CAPACITOR_USES = ["audio coupling", "screen bypass", "", "first filter"];

/** A set of 120 parts in six sections, resistors and capacitors of every size and use. */
function parts(): readonly Part[] {
  return Array.from({ length: 120 }, (_, i) => {
    const isResistor = i % 2 === 0;
    const stated: Partial<ListedPart> = isResistor
      ? { value: VALUES[i % VALUES.length]!, use: USES[i % USES.length]! }
      : { kind: "capacitor", value: FARADS[i % FARADS.length]!, volts: 400, use: CAPACITOR_USES[i % 4]! };
    const part = listed({ printed: `line ${i}`, section: `section ${i % 6}`, ...stated });
    return complete(part, { id: `S-${i}`, document: "factory", inForce: DEFAULTS_IN_FORCE, era: 1948 });
  });
}

/** What it costs to decide and rate a whole set: under 100 ms is the aim for 120 parts. */
export const bench: Bench = {
  title: "deciding a set of 120 parts",
  rows: () => {
    const set = parts();
    return [
      { what: "recognise and complete", count: 120, run: () => parts() },
      {
        what: "decide and rate",
        count: 120,
        run: () => set.map((part) => stagesOfPart(part, DEFAULTS_IN_FORCE)),
        comparedWith: "recognise and complete",
        goal: { median: 0.1 },
      },
    ];
  },
};
