import { type Place, UNKNOWN_PLACE } from "../circuit/place.js";
import { isInside, isLeftOut, isValueOpen, isValueUnknown } from "../listedAs.js";
import type { Part, Tolerance } from "../part.js";
import { writeValue } from "../quantity/writeValue.js";
import type { Aim, Ratings, Rejected } from "../ratings.js";
import type { Settings } from "../rule.js";
import type { RuleFor } from "../rules/ruleFor.js";
import { technologyOf } from "../rules/technologies.js";
import { decidingLimit } from "./decidingLimit.js";
import { findAim } from "./findAim.js";
import { fitOfAim } from "./fitOf.js";
import { linePart } from "./lineParts.js";
import { fuseAim, lampAim } from "./namedAim.js";
import { type Need, needOf } from "./need.js";
import { NEVER_INSTEAD } from "./neverInstead.js";
import { rangeOf, rangeSaid } from "./rangeOf.js";
import { seleniumAim } from "./seleniumAim.js";
import { stringAim } from "./stringAim.js";
import { warmUpOf } from "./voltsNeeded.js";

/** What stands besides part, rule and settings: the place in the circuit, the values to be had, the room. */
export type RateOptions = {
  readonly place?: Place;
  readonly stock?: readonly number[] | null;
  readonly room?: Ratings["room"];
};

/** The aim and what was found on the way to it. */
type Found = {
  readonly aim: Aim | null;
  readonly technology: string | null;
  readonly rejected: readonly Rejected[];
  readonly because: readonly string[];
  readonly choices: readonly string[];
  readonly figures: Readonly<Record<string, number>>;
};

const NOTHING: Found = { aim: null, technology: null, rejected: [], because: [], choices: [], figures: {} };

/** Kinds that are checked and give load data, and are never ordered. */
const NEVER_ORDERED: readonly string[] = ["tube", "transformer", "inductor"];

/** The way a part's aim is found: by class where it is no matter of value and rating, else by searching both together. */
function findFor(need: Need): Found {
  const { classRow, valueMode, safety } = need.rule;
  if (safety !== null) return atTheLine(need);
  if (classRow.id === "selenium") return { ...NOTHING, technology: "silicon", ...seleniumAim(need) };
  if (classRow.id === "ballast" || classRow.id === "line_cord_r") return { ...NOTHING, ...stringAim(need) };
  if (need.part.kind === "fuse") return { ...NOTHING, ...fuseAim(need) };
  if (need.part.kind === "lamp") return { ...NOTHING, ...(lampAim(need) ?? { aim: asItWas(need) }) };
  if (valueMode === "split" && need.value.wanted === null)
    return { ...NOTHING, because: ["split it into its pieces first"] };
  if (NEVER_ORDERED.includes(need.part.kind) || need.rule.action === "ask") return NOTHING;
  if (isLeftOut(need.part) || isInside(need.part)) return NOTHING;
  if (isValueUnknown(need.part, need.rule)) return { ...NOTHING, because: ["its value is not known"] };
  if (isValueOpen(need.part, need.rule))
    return {
      ...NOTHING,
      because: ["its value is known within limits only: take what the old one is marked, or reads lifted"],
    };
  if (valueMode === "same" || need.rule.powerMode === "exact" || need.value.wanted === null)
    return { ...NOTHING, aim: asItWas(need), technology: need.rule.technologies[0] ?? null };
  return { ...NOTHING, ...findAim(need) };
}

/** The part as it was, in the first technology of its rule; null where the rule names none. */
function asItWas(need: Need): Aim | null {
  const { part, rule, watts, volts } = need;
  const technology = rule.technologies[0];
  if (technology === undefined) return null;
  const value = part.value?.value ?? null;
  const piece = {
    value,
    tolerance: part.tolerance?.value ?? null,
    watts: watts.want ?? part.watts?.value ?? null,
    volts: volts.want,
    technology,
  };
  return {
    pieces: [piece],
    text: value === null ? (technologyOf(technology)?.label ?? technology) : writeValue(value, part.kind),
  };
}

function atTheLine(need: Need): Found {
  const line = linePart(need);
  const search = line.choices.length > 0 || need.value.mode === "ask" ? null : findAim(need);
  return {
    ...NOTHING,
    ...line,
    aim: search?.aim ?? null,
    technology: need.rule.technologies[0] ?? null,
    rejected: [...line.rejected, ...(search?.rejected ?? [])],
    because: [...line.because, ...(search?.because ?? [])],
  };
}

/** Where a piece of a printed network lies: what the list says, else that it has to be traced. */
function pinsOf({ pins, parent }: Part, { classRow }: RuleFor): readonly string[] {
  if (classRow.kind !== "network") return [];
  const whole = parent ?? "the network";
  return [
    pins === null
      ? `the list does not say between which pins of ${whole} it lies: trace them before ${whole} comes out`
      : `between pins ${pins} of ${whole}`,
  ];
}

/** The widest tolerance with which the value aimed at stays within the old limits, never closer than what is aimed at. */
function toleranceAllowed(found: Found, need: Need): Tolerance | null {
  const [piece, second] = found.aim?.pieces ?? [];
  const { old } = need.value;
  if (!piece || piece.value === null || second || old === null || piece.tolerance === null)
    return piece?.tolerance ?? null;
  return {
    minus: Math.max(piece.tolerance.minus, 1 - old.min / piece.value),
    plus: Math.max(piece.tolerance.plus, old.max / piece.value - 1),
  };
}

/**
 * The limits that a replacement has to meet, and the standard part, or the parts, aimed at.
 *
 * Volts are looked at before watts, and value and rating are searched together. What is not known of the place is not
 * made up: the old rating then stands in for it.
 *
 * @param part One designator or one section, completed.
 * @param rule The rule that holds for it (`ruleFor`).
 * @example ratingsFor(part, ruleFor(inForce, "carbon_comp", "plate_load"), settings, { place: { ...UNKNOWN_PLACE, volts: 250 } }).leastVolts // 312.5
 */
export function ratingsFor(part: Part, rule: RuleFor, settings: Settings, options: RateOptions = {}): Ratings {
  const place = options.place ?? UNKNOWN_PLACE;
  const need = needOf(part, rule, place, settings, options.stock ?? null);
  const found = findFor(need);
  const { value, watts, volts } = need;
  const range = rangeOf(found.aim, part.kind);
  const single = found.aim?.pieces.length === 1 ? found.aim.pieces[0] : undefined;
  const room = options.room ?? null;
  const isShell = part.kind === "capacitor" && settings.hide_new_parts === "restuff";
  const warmUpVolts = part.kind === "capacitor" ? warmUpOf(place, settings) : null;
  return {
    kind: part.kind,
    wanted: value.wanted,
    window: value.window,
    old: value.old,
    range,
    gate: rule.gate ?? "none",
    leastWatts: watts.least,
    wantWatts: single?.watts ?? watts.want,
    mostWatts: watts.most,
    leastVolts: volts.least,
    wantVolts: volts.want,
    voltsKind: volts.kind,
    tolerance: toleranceAllowed(found, need),
    technologies: [...new Set([...(found.technology ? [found.technology] : []), ...rule.technologies])],
    safety: rule.safety,
    temperatureCoefficient: part.temperatureCoefficient?.value ?? null,
    taper: part.taper,
    room,
    fit: fitOfAim(part, { aim: found.aim, room }, isShell),
    aim: found.aim,
    rejected: [
      ...(NEVER_INSTEAD[rule.classRow.id] ?? []),
      ...(NEVER_INSTEAD[rule.roleRow.id] ?? []),
      ...found.rejected,
    ],
    because: [
      ...value.because,
      ...watts.because,
      ...volts.because,
      ...found.because,
      ...(range && value.old && value.wanted !== null ? [rangeSaid(range, value.old, part.kind)] : []),
      ...pinsOf(part, rule),
    ],
    decides: decidingLimit(need, found.aim, found.because),
    choices: found.choices,
    figures: {
      ...(watts.lost === null ? {} : { lostWatts: watts.lost }),
      ...(warmUpVolts === null ? {} : { warmUpVolts }),
      ...found.figures,
    },
  };
}
