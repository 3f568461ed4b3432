import { type Place, UNKNOWN_PLACE } from "../circuit/place.js";
import type { Finding } from "../decide/reading.js";
import { testFinding } from "../decide/testFinding.js";
import type { Kind } from "../part.js";
import type { SaidFigures } from "../read/said/saidFigures.js";
import type { FigureName } from "../read/said/statement.js";

/** One figure that was stated of a part, in base units; null where it was not. */
export type Stated = (name: FigureName) => number | null;

/** One figure of those stated, for a section by its number; the volts of a string's heaters add up. */
export const statedIn =
  (figures: SaidFigures, index = 0): Stated =>
  (name) => {
    const list = figures.get(name) ?? [];
    if (name === "stringVolts" && list.length > 0) return list.reduce((sum, volts) => sum + volts, 0);
    return list[index] ?? list[0] ?? null;
  };

/** A bias supply's volts are as hard on a part below the chassis as above it. */
export const magnitude = (volts: number | null) => (volts === null ? null : Math.abs(volts));

const highest = (...all: readonly (number | null)[]): number | null => {
  const known = all.filter((one) => one !== null);
  return known.length === 0 ? null : Math.max(...known);
};

/** What stands across a part of which the volts at its ends are told: their difference, else the one end's against ground. */
function betweenEnds(ends: readonly number[]): number | null {
  return ends.length > 1 ? Math.max(...ends) - Math.min(...ends) : (ends[0] ?? null);
}

/**
 * The place that stated figures describe. What stands across a resistor at its worst are the volts it is rated for; a
 * capacitor tells steady volts and peaks apart, and a pulse stands on its steady volts.
 *
 * @param ends Volts told of the part's ends.
 * @example placeSaid("resistor", (name) => (name === "pulseVolts" ? 600 : null), []).peakVolts // 600
 */
export function placeSaid(kind: Kind, figure: Stated, ends: readonly number[]): Place {
  const [volts, peak, warm, pulse] = (["volts", "peakVolts", "warmUpVolts", "pulseVolts"] as const).map((name) =>
    magnitude(figure(name)),
  );
  const isCapacitor = kind === "capacitor";
  const pulsePeak = pulse == null ? null : pulse + (isCapacitor ? (volts ?? 0) : 0);
  return {
    ...UNKNOWN_PLACE,
    volts: volts ?? (isCapacitor ? null : peak!) ?? betweenEnds(ends),
    acVolts: figure("acVolts"),
    peakVolts: highest(isCapacitor ? peak! : warm!, pulsePeak),
    warmUpVolts: isCapacitor ? warm! : null,
    windingVolts: figure("windingVolts"),
    amps: figure("amps"),
    watts: figure("lostWatts"),
    celsius: figure("celsius"),
    rectifierFarads: figure("rectifierFarads"),
    gridOhms: figure("gridOhms"),
    loadAmps: figure("loadAmps") ?? figure("amps"),
    plates: figure("plates"),
    dropVolts: figure("dropVolts"),
    stringVolts: figure("stringVolts"),
  };
}

/** What stated figures of a bench test say of a part; none where its class has no such test. */
export function testSaid(className: string, figure: Stated): readonly Finding[] {
  const found = testFinding(className, {
    forwardVolts: figure("forwardVolts"),
    reverseOhms: figure("reverseOhms"),
    strikeVolts: figure("strikeVolts"),
    startVolts: figure("startVolts"),
    supplyVolts: figure("supplyVolts"),
    startShare: figure("startShare"),
    dissipation: figure("dissipation"),
    caseOhms: figure("caseOhms"),
  });
  return found ? [found] : [];
}
