import { PartsError } from "../problem.js";
import { DIAL_LAMPS, type DialLamp } from "./dialLamps.js";

/** A dial lamp, and the other types of the same volts and amperes: only their base differs. */
export type LampFound = { readonly lamp: DialLamp; readonly alike: readonly number[] };

/** The number in the ways it is written: 47, #47, No. 47, type 47. */
const numberOf = (type: number | string) =>
  String(type)
    .trim()
    .replace(/^(?:#|no\.?|type)\s*/i, "");

/**
 * A dial lamp by its type number.
 *
 * In a string of heaters the current must be the old lamp's: a type of the same volts and other amperes does not serve.
 *
 * @throws PartsError "unknown-name" for a number the table lacks.
 * @example dialLamp(47).alike // [40]
 */
export function dialLamp(type: number | string, lamps: readonly DialLamp[] = DIAL_LAMPS): LampFound {
  const lamp = lamps.find((known) => String(known.type) === numberOf(type));
  if (!lamp) throw new PartsError("unknown-name", type, `Lamps are ${lamps.map((known) => known.type).join(", ")}.`);
  const same = (other: DialLamp) => other.volts === lamp.volts && other.amps === lamp.amps && other !== lamp;
  return { lamp, alike: lamps.filter(same).map((other) => other.type) };
}
