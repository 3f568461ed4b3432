import { rungFor, stepUp } from "../circuit/ladder.js";
import { leastRating } from "../circuit/leastRating.js";
import type { Place } from "../circuit/place.js";
import type { Part } from "../part.js";
import { figures } from "../quantity/figures.js";
import type { Settings } from "../rule.js";
import { LADDERS } from "../rules/ladders.js";
import type { RuleFor } from "../rules/ruleFor.js";

/** Watts that must be met, are aimed at and must not be passed; `lost` is what the place is known to burn. */
export type WattsNeeded = {
  readonly least: number | null;
  readonly want: number | null;
  readonly most: number | null;
  readonly lost: number | null;
  readonly because: readonly string[];
};

const NONE: WattsNeeded = { least: null, want: null, most: null, lost: null, because: [] };

/** Classes wound of wire, where a step up is size and price and a doubled rating is never asked for. */
const WOUND: readonly string[] = ["wirewound", "metal_clad_ww", "strip_ww"];

/** Up to these ohms a wirewound may be there to open or to tame a surge. */
const SURGE_OHMS = 10;

const short = (number: number) => figures(Number(number.toPrecision(3)));

/** The watts a resistor burns in its place, by what is known of it; null where nothing is. */
export function wattsLost(ohms: number, place: Place): number | null {
  if (place.watts !== null) return place.watts;
  if (place.amps !== null) return place.amps ** 2 * ohms;
  const volts = place.volts ?? place.peakVolts;
  return volts === null ? null : volts ** 2 / ohms;
}

/**
 * The watts a new resistor must have: the known loss over the load allowed, else the old watts a step up.
 *
 * What must stay exact (fusible) keeps its watts, neither less nor more. A wirewound meets its watts and aims one step up,
 * never at twice them; of 10 ohms or less and of unknown use it keeps its watts until the user says that it is there
 * neither to open nor to tame a surge.
 *
 * @example wattsNeeded(part, rule, UNKNOWN_PLACE, settings).want // 1 for half a watt of composition
 */
export function wattsNeeded(part: Part, rule: RuleFor, place: Place, settings: Settings): WattsNeeded {
  if (part.kind !== "resistor" && part.kind !== "network") return NONE;
  const old = part.watts?.value ?? null;
  const ohms = part.value?.value ?? null;
  if (rule.powerMode === "exact") {
    const because = old === null ? [] : [`${short(old)} W as it was, neither less nor more`];
    return { ...NONE, least: old, want: old, most: old, because };
  }
  const isWound = WOUND.includes(rule.classRow.id) || part.construction?.value === "wirewound";
  if (isWound && old !== null && ohms !== null && ohms <= SURGE_OHMS && part.role === null) {
    const because = [`${short(ohms)} ohms of wire may be there to open or to tame a surge: ${short(old)} W stays`];
    return { ...NONE, least: old, want: old, most: old, because };
  }
  const lost = ohms === null ? null : wattsLost(ohms, place);
  if (lost !== null) return isWound && old !== null ? woundKnown(lost, old, settings) : known(lost, old, settings);
  if (old === null) return NONE;
  return isWound ? wound(old, settings) : stepped(old, settings);
}

function known(lost: number, old: number | null, settings: Settings): WattsNeeded {
  const load = Number(settings.res_load_max);
  const needed = leastRating({ stress: lost, share: load });
  const least = rungFor(Math.max(needed, old ?? 0), LADDERS.res_W!);
  const because = [`it burns ${short(lost)} W, ${short(needed)} W at ${short(load * 100)} % load`];
  return { ...NONE, least, want: least, lost, because };
}

/** Wire whose loss is known: half load where a rating below twice the old one gives it, else as near as that. */
function woundKnown(lost: number, old: number, settings: Settings): WattsNeeded {
  const ladder = LADDERS.res_W!;
  const found = known(lost, old, settings);
  const cap = Math.max(ladder.filter((rung) => rung < 2 * old).at(-1) ?? old, rungFor(lost, ladder));
  if (found.least !== null && found.least <= cap) return found;
  const because = [...found.because, `wire is never doubled: ${short(cap)} W, at ${short((lost / cap) * 100)} % load`];
  return { ...found, least: cap, want: cap, because };
}

function stepped(old: number, settings: Settings): WattsNeeded {
  const steps = Number(settings.unknown_power_steps);
  const least = stepUp(old, LADDERS.res_W!, steps);
  const because = steps > 0 ? [`watts it burns are not known: ${short(old)} W a step up is ${short(least)} W`] : [];
  return { ...NONE, least, want: least, because };
}

function wound(old: number, settings: Settings): WattsNeeded {
  const ladder = LADDERS.res_W!;
  const least = rungFor(old, ladder);
  const up = ladder[ladder.indexOf(least) + Number(settings.unknown_power_steps)] ?? least;
  const want = up < 2 * old ? up : least;
  const most = ladder.filter((rung) => rung < 2 * old).at(-1) ?? null;
  return { ...NONE, least, want, most, because: [`wire: ${short(old)} W or a step more, never doubled`] };
}
