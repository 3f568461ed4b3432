import { labelsOf } from "./label.js";
import { numberIn } from "./numberIn.js";

/** Short names of settings that share no two words with their keys. */
const SHORT: Readonly<Record<string, string>> = {
  nearest: "nearest_by",
  drift: "r_drift_general_pct",
  "drift limit": "r_drift_general_pct",
  shift: "grid_shift_V",
  floor: "film_floor_V",
};

type Settings = Readonly<Record<string, number | string>>;

/**
 * The setting that a label names: by its key, by a usual short name, or by two words or more that only its key holds.
 *
 * @example settingNamed("driftRule", { r_drift_rule: "marked" }) // "r_drift_rule"
 */
export function settingNamed(key: string, settings: Settings): string | null {
  if (key in settings) return key;
  for (const { words } of labelsOf(key)) {
    const short = SHORT[words.join(" ")];
    if (short !== undefined && short in settings) return short;
    const holding = Object.keys(settings).filter((each) => {
      const own = each.toLowerCase().split("_");
      return words.length > 1 && words.every((word) => own.includes(word));
    });
    if (holding.length === 1) return holding[0]!;
  }
  return null;
}

/** A setting's value as its sheet holds it: a number where the default is one, a choice in its own words. */
export function settingValue(value: number | string, usual: number | string | undefined): number | string {
  if (typeof value === "number") return value;
  if (typeof usual === "number") return numberIn(value)?.number ?? value;
  return value
    .trim()
    .toLowerCase()
    .replace(/^(never|not)[ _-]/, "not-");
}
