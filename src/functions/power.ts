import * as core from "../core/index.js";
import { choice, amount as degrees, rating, size, text } from "./ask.js";
import { spill } from "./cell.js";
import { policiesIn } from "./policiesIn.js";

/**
 * Which ratings are made: the ladder that a derated rating is looked up on.
 * @customenum {string}
 */
export enum RatingLadder {
  Watts = "watts",
  FilmVolts = "film volts",
  ElectrolyticVolts = "electrolytic volts",
  CeramicVolts = "ceramic volts",
  MicaVolts = "mica volts",
}

const LADDERS = {
  watts: core.LADDERS.res_W!,
  "film volts": core.LADDERS.film_V!,
  "electrolytic volts": core.LADDERS.elec_V!,
  "ceramic volts": core.LADDERS.ceramic_V!,
  "mica volts": core.LADDERS.mica_V!,
} as const;
/** A power resistor of today: full watts up to here, none there. "common practice" for film types */
const USUAL_KNEE_CELSIUS = 70;
const USUAL_ZERO_CELSIUS = 155;

const LADDER_NAMES = Object.keys(LADDERS) as (keyof typeof LADDERS)[];

/**
 * The rating in watts or volts to buy, so that the new part has room: steps above an old rating, or a share of the new one for a known stress.
 * @customfunction DERATE
 * @helpurl reference.html#DERATE
 * @param amount The old rating (for steps), or the watts or volts that the part really bears (for a share or a policy).
 * @param how 1 step (when left out), 2 steps, a share such as 50%, or the name of a policy such as NAVSEA SD-18. A policy is a starting point; following it complies with nothing.
 * @param ladder Which ratings are made: watts (when left out), film volts, electrolytic volts, ceramic volts or mica volts.
 * @param part The part that a policy is asked for, such as film resistor, film or electrolytic; resistor when left out.
 * @param celsius How warm it gets around the part, in degrees: no loss by heat when left out.
 * @param kneeCelsius Up to how many degrees it carries its full rating: what the policy says, else 70, when left out.
 * @param zeroCelsius At how many degrees it carries nothing: what the policy says, else 155, when left out.
 * @param policies The sheet Derating with its heads, where you edit the policies; the published ones when left out. Any range will do with policy, part, watts or volts, and share in each row.
 * @returns The rating to buy, then the least rating that was needed.
 * @example LUG.DERATE(0.5) -> {1, 1}
 */
export function derate(
  amount: unknown[][],
  how?: unknown[][],
  ladder?: RatingLadder[][],
  part?: unknown[][],
  celsius?: unknown[][],
  kneeCelsius?: unknown[][],
  zeroCelsius?: unknown[][],
  policies?: unknown[][],
): unknown[][] {
  let known: readonly core.DeratingRow[] | null = null;
  const inForce = () => {
    known ??= policiesIn(policies);
    return known;
  };
  return spill(
    [
      rating(amount, "amount", ladderMeasure(ladder)),
      text(how, "1 step"),
      choice(ladder, "ladder", LADDER_NAMES, "watts"),
      text(part, "resistor"),
      degrees(celsius, "celsius", null),
      degrees(kneeCelsius, "kneeCelsius", null),
      degrees(zeroCelsius, "zeroCelsius", null),
    ],
    (amount, how, ladder, part, celsius, knee, zero) => {
      const derating = core.readDerating(how, part, ladder === "watts" ? "watts" : "volts", inForce());
      const said = "share" in derating ? derating : null;
      const kneeCelsius = knee ?? said?.kneeCelsius ?? USUAL_KNEE_CELSIUS;
      const zeroCelsius = zero ?? said?.zeroCelsius ?? USUAL_ZERO_CELSIUS;
      const heatShare = celsius === null ? 1 : core.heatShare({ celsius, kneeCelsius, zeroCelsius });
      const { rung, least } = core.derate({ amount, derating, heatShare }, LADDERS[ladder]);
      return [[rung, least]];
    },
  );
}

function ladderMeasure(ladder: unknown): core.Measure {
  return String(ladder ?? "watts").includes("volts") ? "volt" : "watt";
}

/**
 * The volts that a resistor may bear: the smaller of what its watts allow and what its body does.
 * @customfunction MAX_VOLTS
 * @helpurl reference.html#MAX_VOLTS
 * @param ohms The value: a number in ohms, or text such as 470 k.
 * @param watts Its rated watts.
 * @param body What its body bears: volts, or a technology such as metal_film or carbon_comp_old, whose usual figure is then taken; only the watts count when left out.
 * @returns Volts, dc or rms.
 * @example LUG.MAX_VOLTS("1 M", 0.5, 350) -> 350
 */
export function maxVolts(ohms: unknown[][], watts: unknown[][], body?: unknown[][]): unknown[][] {
  return spill([size(ohms, "ohms"), rating(watts, "watts", "watt"), text(body, "")], (ohms, watts, body) => [
    [core.maxVolts({ ohms, watts, bodyVolts: bodyVolts(body, watts) })],
  ]);
}

/** Volts written out, or the usual ones of a technology. */
function bodyVolts(body: string, watts: number): number | null {
  if (body === "") return null;
  if (/^\d/.test(body)) return core.readMeasure(body, "volt");
  const technology = body.toLowerCase().replace(/[\s-]+/g, "_");
  if (core.BODY_VOLTS[technology]) return core.usualBodyVolts(technology, watts);
  throw new core.PartsError("unknown-name", body, `Give volts, or one of ${Object.keys(core.BODY_VOLTS).join(", ")}.`);
}

/**
 * How hard a resistor works in its place, as a ratio of its watts and of its volts: 1 is full load.
 * @customfunction LOAD_OF
 * @helpurl reference.html#LOAD_OF
 * @param ohms The value: a number in ohms, or text such as 220 k.
 * @param watts Its rated watts.
 * @param volts The volts across it, dc or rms; or leave them out and give the amperes.
 * @param amperes The amperes through it, where the volts are left out; text such as 10 mA serves.
 * @param bodyVolts The volts that its body bears, where known.
 * @returns The ratio of its watts, the ratio of its volts (blank where no limit is known), and the watts it turns to heat.
 * @example LUG.LOAD_OF("100 k", 0.5, 100, , 350) -> {0.2, 0.285714286, 0.1}
 */
export function loadOf(
  ohms: unknown[][],
  watts: unknown[][],
  volts?: unknown[][],
  amperes?: unknown[][],
  bodyVolts?: unknown[][],
): unknown[][] {
  return spill(
    [
      size(ohms, "ohms"),
      rating(watts, "watts", "watt"),
      rating(volts, "volts", "volt", null),
      rating(amperes, "amperes", "ampere", null),
      rating(bodyVolts, "bodyVolts", "volt", null),
    ],
    (ohms, watts, volts, amperes, bodyVolts) => {
      const load = core.loadOf({ ohms, watts, bodyVolts }, { volts, amperes });
      return [[load.ofWatts, load.ofVolts ?? "", load.watts]];
    },
  );
}
