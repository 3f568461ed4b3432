import type { CanSection } from "../part.js";
import { readValue } from "../quantity/readValue.js";
import { writeValue } from "../quantity/writeValue.js";

/** Sections of a can as a cell. @example "40 µF 150 V, 20 µF 25 V" */
export function writeCanSections(sections: readonly CanSection[]): string {
  return sections
    .map(({ suffix, farads, volts }) =>
      [suffix && `${suffix}:`, farads !== null && writeValue(farads, "capacitor"), volts !== null && `${volts} V`]
        .filter(Boolean)
        .join(" "),
    )
    .join(", ");
}

/**
 * Such a cell read back.
 *
 * @throws PartsError "unreadable" where a capacitance is none.
 */
export function readCanSections(cell: string | null): readonly CanSection[] | null {
  if (cell === null) return null;
  return cell.split(",").map((entry) => {
    const found = /^\s*(?:(\S+):)?\s*(.*?)\s*(?:([\d.]+)\s*V)?\s*$/.exec(entry)!;
    return {
      suffix: found[1] ?? null,
      farads: found[2] ? readValue(found[2], { kind: "capacitor" }).value : null,
      volts: found[3] ? Number(found[3]) : null,
    };
  });
}
