import type { Kind, Warning } from "../../part.js";
import { times } from "../../quantity/readValue.js";

/** What a value is weighed by. */
type Weighed = {
  readonly kind: Kind;
  readonly value: number;
  readonly volts: number | null;
  readonly watts: number | null;
  readonly dielectric: string | null;
  readonly construction: string | null;
  readonly tolerance: number | null;
  readonly text: string;
};

/** The largest capacitance that a make was ever listed with in sets of the kind (farads; common practice). */
const LARGEST: Readonly<Record<string, number>> = {
  mica: 0.11e-6, "silver-mica": 0.11e-6, ceramic: 22e-6, paper: 60e-6, oil: 100e-6, film: 100e-6, polyester: 50e-6, polystyrene: 2e-6, air: 0.01e-6,
  electrolytic: 0.5, tantalum: 5e-3,
}; // biome-ignore format: a table
/** Ceramics for more than this were small. */
const HIGH_VOLTS = 100;
const LARGEST_HIGH_CERAMIC = 1e-6;
const SMALLEST_CAPACITOR = 0.2e-12;
/** No capacitor of 10 % or closer is larger than this above 50 volts, unless it is a film one. */
const LARGEST_CLOSE = 20e-6;
const SMALLEST_ELECTROLYTIC = 0.05e-6;
const LARGEST_CHOKE_RF = 1;
const LARGEST_COIL = 1000;
const LARGEST_RESISTOR = 1e9;
/** Above this only special high-value resistors were made, and lists name them so. */
const LARGEST_COMPOSITION = 100e6;
const SMALLEST_COMPOSITION = 1;
const MOST_WATTS_COMPOSITION = 2;

/** A warning when a value can hardly be meant, with the reading that would be likely; null when it can. */
export function implausible(part: Weighed): Warning | null {
  const why =
    part.kind === "capacitor"
      ? capacitor(part)
      : part.kind === "inductor"
        ? inductor(part)
        : part.kind === "resistor"
          ? resistor(part)
          : null;
  return why ? { code: "implausible-value", text: why } : null;
}

function capacitor({ value, volts, dielectric, tolerance }: Weighed): string | null {
  const limit =
    dielectric === "ceramic" && (volts ?? 0) > HIGH_VOLTS ? LARGEST_HIGH_CERAMIC : (LARGEST[dielectric ?? ""] ?? 0.1);
  const isClose =
    dielectric !== "electrolytic" &&
    dielectric !== "film" &&
    tolerance !== null &&
    tolerance <= 0.05 &&
    (volts ?? 0) >= 50;
  if (value > limit || (isClose && value > LARGEST_CLOSE))
    return `${value} F is too large for such a capacitor; ${times(value, 1e-6)} F is likely meant`;
  if (value < SMALLEST_CAPACITOR || (dielectric === "electrolytic" && value < SMALLEST_ELECTROLYTIC))
    return `${value} F is too small for such a capacitor; ${times(value, 1e6)} F is likely meant`;
  return null;
}

function inductor({ value, text }: Weighed): string | null {
  const isSmall = /\b(?:r\.?\s?f|peaking|i\.?\s?f|osc)/i.test(text);
  return (isSmall && value > LARGEST_CHOKE_RF) || value > LARGEST_COIL
    ? `${value} H is too large for such a coil; ${times(value, 1e-6)} H is likely meant`
    : null;
}

function resistor({ value, watts, construction, text }: Weighed): string | null {
  if (value > LARGEST_RESISTOR) return `${value} ohms is too large for a resistor`;
  const isPlain = construction === null || construction === "composition";
  if (isPlain && value > LARGEST_COMPOSITION)
    return `${value} ohms is too large for such a resistor; ${value / 1000} ohms is likely meant`;
  const isSmall =
    value < SMALLEST_COMPOSITION &&
    isPlain &&
    watts !== null &&
    watts <= MOST_WATTS_COMPOSITION &&
    !/shunt|fus|sense|\dR|R\d/i.test(text);
  return isSmall ? `${value} ohms is too small for such a resistor; ${times(value, 1e6)} ohms is likely meant` : null;
}
