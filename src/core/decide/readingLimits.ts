import { esrLimit } from "../circuit/esrLimit.js";
import { insulationFor } from "../circuit/leakage.js";
import type { Place } from "../circuit/place.js";
import type { Part, Span, Tolerance } from "../part.js";
import { windowOf } from "../quantity/window.js";
import type { Settings } from "../rule.js";
import { electrolyticLeakAmps } from "../rules/electrolyticTables.js";
import { HARDWARE_OHMS, LEAK_LIMITS, READ_LIMITS } from "../rules/readLimits.js";
import type { RuleFor } from "../rules/ruleFor.js";
import type { Reading } from "./reading.js";

/** Limits that the user gives instead of the rules': insulation and ESR in ohms, leakage in amperes. */
export type GivenLimits = {
  readonly insulationOhms?: number | null;
  readonly esrOhms?: number | null;
  readonly leakAmps?: number | null;
};

/** What limits are read from. */
export type LimitSources = {
  readonly part: Part;
  readonly rule: RuleFor;
  readonly place: Place;
  readonly settings: Settings;
  readonly given: GivenLimits;
};

const MEGOHM = 1e6;
const FROM = (min: number): Span => ({ min, max: Number.POSITIVE_INFINITY });
const UP_TO = (max: number): Span => ({ min: 0, max });

/** An electrolytic may read this far below its nominal value: the trade's test limit. */
const WET_MINUS = 0.2;
/** Loss of a sound electrolytic at 120 Hz when new; twice that is the limit. From memory of data sheets. */
const NEW_LOSS = 0.2;
const TIMES_NEW = 2;
/** A sealed part that does not leak reads more than this. */
const GIGOHM = 1e9;
const DRY_CLASSES = [
  "mica_foil",
  "mica_silver",
  "ceramic_disc",
  "ceramic_tc",
  "ceramic_feedthrough",
  "ceramic_hv",
  "film_old",
];
/** Uses in which a leak does no more than burn a little current: the trade's limit for a bypass stands. */
const BYPASS_ROLES = ["screen_bypass", "cathode_bypass", "tone", "later_filter", "first_filter", "bias_supply"];
/** A solid tantalum may leak this much for each farad and volt, and a microampere in any case. */
const TANTALUM_AMPS_PER_COULOMB = 0.01;
const TANTALUM_LEAST_AMPS = 1e-6;

/** How far a resistor may have drifted, by the setting: the wider of marked and general, one of them, or half the marked. */
function driftAllowed({ part, rule, settings }: LimitSources): Tolerance {
  const marked = part.tolerance?.value ?? { minus: 0.2, plus: 0.2 };
  const ruled = rule.driftLimit;
  if (ruled === "marked" || ruled === null) return marked;
  switch (settings.r_drift_rule) {
    case "marked":
      return marked;
    case "half-marked":
      return { minus: marked.minus / 2, plus: marked.plus / 2 };
    case "general":
      return { minus: ruled, plus: ruled };
    default:
      return { minus: Math.max(marked.minus, ruled), plus: Math.max(marked.plus, ruled) };
  }
}

/** The insulation a part must have to stay: by its use, by its class, or as the next grid demands. */
export function insulationLimit({ part, rule, place, settings, given }: LimitSources): number {
  if (given.insulationOhms != null) return given.insulationOhms;
  if (part.kind !== "capacitor") return HARDWARE_OHMS;
  const coupling = Number(settings.ins_coupling_Mohm) * MEGOHM;
  const role = rule.roleRow.id;
  if (DRY_CLASSES.includes(rule.classRow.id)) return GIGOHM;
  if (role === "coupling_grid") {
    const volts = place.volts ?? place.peakVolts;
    if (volts === null || place.gridOhms === null) return coupling;
    const shiftVolts = Number(settings.grid_shift_V);
    return Math.max(coupling, insulationFor({ volts, gridOhms: place.gridOhms, shiftVolts }));
  }
  if (rule.classRow.id === "oil" && part.value) return (1000 * MEGOHM) / (part.value.value * 1e6);
  return BYPASS_ROLES.includes(role) ? Number(settings.ins_bypass_Mohm) * MEGOHM : coupling;
}

/** The leakage a part may have at the volts it was read at, by itself its rated volts; null where no rule says. */
function leakLimit(atVolts: number | null, { part, rule, given, ...rest }: LimitSources): number | null {
  if (given.leakAmps != null) return given.leakAmps;
  const [farads, volts] = [part.value?.value, atVolts ?? part.volts?.value];
  if (!farads || !volts) return null;
  if (rule.classRow.id === "tantalum") return Math.max(TANTALUM_AMPS_PER_COULOMB * farads * volts, TANTALUM_LEAST_AMPS);
  if (rule.ladder === "elec_V") return electrolyticLeakAmps({ farads, volts });
  const most = LEAK_LIMITS[rule.classRow.id] ?? Number.POSITIVE_INFINITY;
  return Math.min(most, volts / insulationLimit({ part, rule, given, ...rest }));
}

const OF_OHMS: readonly string[] = ["resistor", "potentiometer", "thermistor"];

/** Of a coil or a tube the printed figure is no resistance; of a winding only where the user says so. */
const hasOhms = ({ kind, value }: Part) => OF_OHMS.includes(kind) || (kind === "transformer" && value?.from === "user");

/** The limits a reading is held to; null where nothing in list, rules or settings says one. */
export function readingLimits(reading: Reading, from: LimitSources): Span | null {
  const nominal = from.part.value?.value ?? null;
  const { quantity } = reading;
  if (quantity === "insulation") return FROM(insulationLimit(from));
  if (quantity === "leakage") {
    const amps = leakLimit(reading.atVolts ?? null, from);
    return amps === null ? null : UP_TO(amps);
  }
  if (quantity === "ESR") {
    if (from.given.esrOhms != null) return UP_TO(from.given.esrOhms);
    return nominal === null
      ? null
      : UP_TO(TIMES_NEW * esrLimit({ farads: nominal, hertz: 120, dissipation: NEW_LOSS }));
  }
  const ruled = READ_LIMITS[from.rule.classRow.id];
  const isElement = nominal !== null && hasOhms(from.part);
  if (ruled && "mostOhms" in ruled) return isElement ? windowOf(nominal, driftAllowed(from)) : UP_TO(ruled.mostOhms);
  if (nominal === null) return from.part.span;
  if (quantity === "resistance" && !hasOhms(from.part)) return null;
  if (ruled) return windowOf(nominal, ruled);
  if (quantity === "resistance") return windowOf(nominal, driftAllowed(from));
  const marked = from.part.tolerance?.value ?? { minus: 0.2, plus: 0.2 };
  const wet = from.rule.ladder === "elec_V";
  return windowOf(nominal, wet ? { ...marked, minus: Math.max(marked.minus, WET_MINUS) } : marked);
}
