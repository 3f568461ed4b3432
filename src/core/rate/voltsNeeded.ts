import { leastRating, peakStress } from "../circuit/leastRating.js";
import { maxVolts } from "../circuit/maxVolts.js";
import type { Place } from "../circuit/place.js";
import { warmupPeak } from "../circuit/warmupPeak.js";
import type { Part } from "../part.js";
import { figures } from "../quantity/figures.js";
import type { Settings } from "../rule.js";
import { usualBodyVolts } from "../rules/bodyVolts.js";
import { LADDERS } from "../rules/ladders.js";
import type { RuleFor } from "../rules/ruleFor.js";

/**
 * Volts that must be met and are aimed at; `stress` is the highest the place puts on the part, where known.
 *
 * `beyond` says that no rating that is made reaches what is needed.
 */
export type VoltsNeeded = {
  readonly least: number | null;
  readonly want: number | null;
  readonly kind: "dc" | "ac";
  readonly stress: number | null;
  readonly beyond: boolean;
  readonly because: readonly string[];
};

const NONE: VoltsNeeded = { least: null, want: null, kind: "dc", stress: null, beyond: false, because: [] };

/** Part of the line that is kept in hand where it stands on a part: 10 %. */
const LINE_MARGIN = 1.1;
/** A class without a ladder of its own (networks) takes mica's below this, film's above. */
const FILM_FROM_FARADS = 1e-9;
/** Electrolytics up to these volts stand where no warm-up peak comes. */
const LOW_VOLTS = 100;

/** Every body bears this; below it the volts are not worth a word. */
const SMALLEST_BODY_VOLTS = 150;

const short = (number: number) => figures(Number(number.toPrecision(4)));

/** The peak before the tubes draw current: as given, else 1.414 times the winding at today's line; null where neither is known. */
export function warmUpOf(place: Place, settings: Settings): number | null {
  if (place.warmUpVolts !== null) return place.warmUpVolts;
  if (place.windingVolts === null) return null;
  return warmupPeak({
    windingVolts: place.windingVolts,
    lineVolts: Number(settings.line_now_V),
    designVolts: Number(settings.line_design_V),
  });
}

/**
 * The volts a new part must bear: a resistor's body, a capacitor's working volts, the line with a tenth in hand.
 *
 * @example voltsNeeded(part, rule, { ...UNKNOWN_PLACE, volts: 250 }, settings).least // 312.5 for a resistor at 80 %
 */
export function voltsNeeded(part: Part, rule: RuleFor, place: Place, settings: Settings): VoltsNeeded {
  if (rule.safety !== null) return lineVolts(rule, settings);
  if (rule.ladder === "fuse_V") return fuseVolts(part, place, settings);
  if (part.kind === "capacitor") return capacitorVolts(part, rule, place, settings);
  if (rule.technologies[0] === "silicon") return reverseVolts(place, settings);
  return part.kind === "resistor" ? bodyVolts(part, place, settings) : NONE;
}

function lineVolts(rule: RuleFor, settings: Settings): VoltsNeeded {
  const needed = Number(settings.line_now_V) * LINE_MARGIN;
  const rungs = LADDERS.safety_VAC!;
  const least = rungs.find((rung) => rung >= needed) ?? needed;
  const want = Math.max(least, figureOf(rule.roleRow.wantVolts, 0, settings) ?? 0);
  const because = [`${settings.line_now_V} V of line and a tenth in hand: ${short(least)} V a.c. or more`];
  return { least, want, kind: "ac", stress: Number(settings.line_now_V), beyond: needed > rungs.at(-1)!, because };
}

/** Reverse volts of silicon: twice the peak of what feeds it and 30 % in hand, bought as 1,000 V stock. Common practice. */
const REVERSE_FACTOR = 2 * Math.SQRT2 * 1.3;
const STOCK_REVERSE_VOLTS = [1000, 1600, 2000, 3000, 5000];

function reverseVolts(place: Place, settings: Settings): VoltsNeeded {
  const today = Number(settings.line_now_V) / Number(settings.line_design_V);
  const fed = place.windingVolts === null ? Number(settings.line_now_V) : place.windingVolts * today;
  const least = fed * REVERSE_FACTOR;
  const want = STOCK_REVERSE_VOLTS.find((rung) => rung >= least) ?? least;
  return {
    ...NONE,
    least,
    want,
    stress: 2 * Math.SQRT2 * fed,
    because: [`${short(least)} V in reverse, a third of it in hand`],
  };
}

function fuseVolts(part: Part, place: Place, settings: Settings): VoltsNeeded {
  const there = Math.max(place.volts ?? 0, place.peakVolts ?? 0);
  const needed = Math.max(part.volts?.value ?? 0, (there || Number(settings.line_now_V)) * LINE_MARGIN);
  const least = LADDERS.fuse_V!.find((rung) => rung >= needed) ?? needed;
  return {
    ...NONE,
    least,
    want: least,
    kind: there ? "dc" : "ac",
    because: [`${short(least)} V or more breaks the arc`],
  };
}

function bodyVolts(part: Part, place: Place, settings: Settings): VoltsNeeded {
  const ohms = part.value?.value ?? null;
  const across = place.amps !== null && ohms !== null ? place.amps * ohms : null;
  const stress = Math.max(place.volts ?? 0, place.peakVolts ?? 0, across ?? 0);
  if (stress === 0) return { ...NONE, want: oldBodyVolts(part) };
  const share = Number(settings.res_volt_max);
  const least = leastRating({ stress, share });
  const tells = least > SMALLEST_BODY_VOLTS;
  const because = tells
    ? [`${short(stress)} V across it, at most ${short(share * 100)} % of its limit: a body for ${short(least)} V`]
    : [];
  return { ...NONE, least, want: least, stress, because };
}

/** What the old body bore: where the place's volts are not known, the new one is asked for as much if it can be had. */
function oldBodyVolts(part: Part): number | null {
  const [ohms, watts] = [part.value?.value, part.watts?.value];
  if (!ohms || !watts || part.className.value !== "carbon_comp") return null;
  return maxVolts({ ohms, watts, bodyVolts: usualBodyVolts("carbon_comp_old", watts) });
}

/** A figure that a rule names: volts, a setting, twice the working volts. */
function figureOf(named: number | string | null, working: number, settings: Settings): number | null {
  if (typeof named === "number" || named === null) return named;
  if (named === "twice_working") return 2 * working;
  const setting = settings[named];
  return typeof setting === "number" ? setting : null;
}

/** Electrolyte dries by heat: in warm air a part for 105 °C. Common practice. */
const WARM_CELSIUS = 60;

const warmth = (wet: boolean, { celsius }: Place) =>
  wet && celsius !== null && celsius >= WARM_CELSIUS ? [`a part for 105 °C: its air is at ${celsius} °C`] : [];

function capacitorVolts(part: Part, rule: RuleFor, place: Place, settings: Settings): VoltsNeeded {
  const ladder = rule.ladder ?? ((part.value?.value ?? 1) < FILM_FROM_FARADS ? "mica_V" : "film_V");
  const rungs = LADDERS[ladder] ?? LADDERS.film_V!;
  const wet = ladder === "elec_V";
  const printed = (part.volts?.value ?? 0) * (ladder === "film_V" ? Number(settings.film_volt_factor) : 1);
  const steady = peakStress({ dcVolts: place.volts ?? 0, acVolts: place.acVolts ?? 0 });
  const meetsPeak = rule.cautions.includes("warmup_peak") || rule.roleRow.id === "coupling_grid";
  const warmUp = meetsPeak && !(wet && printed > 0 && printed <= LOW_VOLTS) ? warmUpOf(place, settings) : null;
  const stress = Math.max(steady, place.peakVolts ?? 0, warmUp ?? 0);
  const inHand = wet ? leastRating({ stress: steady, share: Number(settings.elec_volt_max) }) : steady;
  const ruled = figureOf(rule.leastVolts, steady, settings) ?? 0;
  const needed = Math.max(printed, inHand, stress, ruled);
  if (needed === 0) return NONE;
  const rung = rungs.find((each) => each >= needed * (1 - 1e-9));
  const aimed = rule.wantVolts === "film_floor_V" && ladder !== "film_V" ? null : rule.wantVolts;
  const wanted = Math.max(figureOf(aimed, steady, settings) ?? 0, rung ?? needed);
  const want = rungs.find((each) => each >= wanted * (1 - 1e-9)) ?? wanted;
  const peak = warmUp !== null && warmUp >= needed ? [`the warm-up peak is ${short(warmUp)} V`] : [];
  const most =
    rung === undefined ? [`no single part is made for ${short(needed)} V (${short(rungs.at(-1)!)} V is the top)`] : [];
  return {
    least: rung ?? needed,
    want,
    kind: "dc",
    stress: stress > 0 ? stress : null,
    beyond: rung === undefined,
    because: [...peak, ...most, ...warmth(wet, place)],
  };
}
