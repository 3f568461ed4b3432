import { heatShare } from "../circuit/heat.js";
import { rungFor, stepUp } from "../circuit/ladder.js";
import { leastRating } from "../circuit/leastRating.js";
import type { Place } from "../circuit/place.js";
import type { Part } from "../part.js";
import { PartsError } from "../problem.js";
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

/** Cautions of uses in which the peak is one of pulses. */
const PULSED: readonly string[] = ["res_pulse", "dvdt"];

const short = (number: number) => figures(Number(number.toPrecision(3)));

/**
 * The watts a resistor burns in its place, by what is known of it; null where nothing is.
 *
 * A peak that lasts counts as steady; one of pulses (`isPulsed`) says nothing of average watts.
 */
export function wattsLost(ohms: number, place: Place, isPulsed = false): number | null {
  if (place.watts !== null) return place.watts;
  if (place.amps !== null) return place.amps ** 2 * ohms;
  const volts = place.volts ?? (isPulsed ? null : place.peakVolts);
  return volts === null ? null : volts ** 2 / ohms;
}

/** Where a body's watts begin to fall and where they end, in degrees Celsius. @see MIL-R-39007 (wire), makers of metal film */
const CURVES = { wire: { kneeCelsius: 25, zeroCelsius: 275 }, film: { kneeCelsius: 70, zeroCelsius: 155 } } as const;

/** The share of its watts a body may carry in the air around it, and what is said of it; all of them where nobody measured. */
function heat(isWound: boolean, { celsius }: Place): { readonly share: number; readonly because: readonly string[] } {
  if (celsius === null) return { share: 1, because: [] };
  const share = heatShare({ celsius, ...CURVES[isWound ? "wire" : "film"] });
  if (share === 0)
    throw new PartsError("nothing-fits", `${celsius} °C`, "No such body may get so hot: move it, or cool its place.");
  return {
    share,
    because: share === 1 ? [] : [`in air of ${celsius} °C a body carries ${short(share * 100)} % of its watts`],
  };
}

/**
 * The watts a new resistor must have: the known loss over the load allowed, else the old watts a step up.
 *
 * What must stay exact (fusible) keeps its watts, neither less nor more. A wirewound meets its watts and aims one step up,
 * never at twice them; of 10 ohms or less and of unknown use it keeps its watts until the user says that it is there
 * neither to open nor to tame a surge. In hot air a body carries less, so that more is needed.
 *
 * @throws PartsError "nothing-fits" where the air is as hot as a body may ever get, or no rating is large enough.
 * @example wattsNeeded(part, rule, UNKNOWN_PLACE, settings).want // 1 for half a watt of composition
 */
export function wattsNeeded(part: Part, rule: RuleFor, place: Place, settings: Settings): WattsNeeded {
  if (part.kind !== "resistor") return NONE;
  const old = part.watts?.value ?? null;
  const ohms = part.value?.value ?? null;
  if (rule.powerMode === "exact") return kept(old, []);
  const isWound = WOUND.includes(rule.classRow.id) || part.construction?.value === "wirewound";
  if (isWound && old !== null && ohms !== null && ohms <= SURGE_OHMS && part.role === null)
    return kept(old, [`${short(ohms)} ohms of wire may be there to open or to tame a surge: ${short(old)} W stays`]);
  const lost =
    ohms === null
      ? null
      : wattsLost(
          ohms,
          place,
          PULSED.some((id) => rule.roleRow.cautions.includes(id)),
        );
  const hot = heat(isWound, place);
  const load = Number(settings.res_load_max) * hot.share;
  const unknown = () => (isWound ? wound(old, settings) : stepped(old, hot.share, settings));
  const found =
    lost === null ? unknown() : isWound && old !== null ? woundKnown(lost, old, load) : known(lost, old, load);
  return { ...found, because: [...hot.because, ...found.because] };
}

/** What stays as it was: its watts, neither less nor more. */
function kept(old: number | null, because: readonly string[]): WattsNeeded {
  const said = old === null ? [] : [`${short(old)} W as it was, neither less nor more`];
  return { ...NONE, least: old, want: old, most: old, because: because.length > 0 ? because : said };
}

function known(lost: number, old: number | null, load: number): WattsNeeded {
  const needed = leastRating({ stress: lost, share: load });
  const least = rungFor(Math.max(needed, old ?? 0), LADDERS.res_W!);
  const because = [`it burns ${short(lost)} W, ${short(needed)} W at ${short(load * 100)} % load`];
  return { ...NONE, least, want: least, lost, because };
}

/** Wire whose loss is known: the load allowed where a rating below twice the old one gives it, else as near as that. */
function woundKnown(lost: number, old: number, load: number): WattsNeeded {
  const ladder = LADDERS.res_W!;
  const found = known(lost, old, load);
  const cap = Math.max(ladder.filter((rung) => rung < 2 * old).at(-1) ?? old, rungFor(lost, ladder));
  if (found.least !== null && found.least <= cap) return found;
  const because = [...found.because, `wire is never doubled: ${short(cap)} W, at ${short((lost / cap) * 100)} % load`];
  return { ...found, least: cap, want: cap, because };
}

function stepped(old: number | null, share: number, settings: Settings): WattsNeeded {
  if (old === null) return NONE;
  const steps = Number(settings.unknown_power_steps);
  const least = rungFor(stepUp(old, LADDERS.res_W!, steps) / share, LADDERS.res_W!);
  const because = steps > 0 ? [`watts it burns are not known: ${short(old)} W a step up is ${short(least)} W`] : [];
  return { ...NONE, least, want: least, because };
}

function wound(old: number | null, settings: Settings): WattsNeeded {
  if (old === null) return NONE;
  const ladder = LADDERS.res_W!;
  const least = rungFor(old, ladder);
  const up = ladder[ladder.indexOf(least) + Number(settings.unknown_power_steps)] ?? least;
  const want = up < 2 * old ? up : least;
  const most = ladder.filter((rung) => rung < 2 * old).at(-1) ?? null;
  return { ...NONE, least, want, most, because: [`wire: ${short(old)} W or a step more, never doubled`] };
}
