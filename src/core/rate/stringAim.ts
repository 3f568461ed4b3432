import { DROP_METHODS, type DropMethod, heaterDrop } from "../circuit/heaterDrop.js";
import { rungFor } from "../circuit/ladder.js";
import { leastRating } from "../circuit/leastRating.js";
import { attempt } from "../problem.js";
import { figures } from "../quantity/figures.js";
import { nearest } from "../quantity/nearest.js";
import { SERIES } from "../quantity/series.js";
import { writeValue } from "../quantity/writeValue.js";
import type { Aim } from "../ratings.js";
import { LADDERS } from "../rules/ladders.js";
import type { Need } from "./need.js";

/** What drops the line to a string of heaters: the resistor aimed at, and the schools among which the user chooses. */
export type StringAim = {
  readonly aim: Aim | null;
  readonly choices: readonly string[];
  readonly figures: Readonly<Record<string, number>>;
  readonly because: readonly string[];
};

const short = (number: number) => figures(Number(number.toPrecision(3)));

type Drop = { readonly ohms: number; readonly lostWatts: number; readonly watts: number };

/** The resistor for a drop: nearest E24 value, watts at the load allowed. */
function dropResistor(ohms: number, amps: number, load: number): Drop {
  const value = nearest(ohms, SERIES.E24);
  const lostWatts = amps ** 2 * value;
  return { ohms: value, lostWatts, watts: rungFor(leastRating({ stress: lostWatts, share: load }), LADDERS.res_W!) };
}

/**
 * The dropper of a heater string from its current and its volts at today's line; four schools, the user picks.
 *
 * A ballast becomes a resistor of its own; for a resistance cord there is no aim until the user has chosen.
 */
export function stringAim(need: Need): StringAim {
  const { place, settings, rule } = need;
  const amps = place.amps;
  if (amps === null || place.stringVolts === null) {
    const because = ["give the string's current and the sum of its heaters' volts: they decide, not the stamp"];
    return { aim: null, choices: rule.valueMode === "ask" ? SCHOOLS : [], figures: {}, because };
  }
  const string = {
    lineVolts: Number(settings.line_now_V),
    heaterVolts: place.stringVolts,
    amperes: amps,
    hertz: Number(settings.line_hz),
  };
  const load = Number(settings.res_load_max);
  const told = DROP_METHODS.map((method) => toldOf(string, method, load));
  const byResistor = heaterDrop(string, "resistor");
  const drop = dropResistor(byResistor.ohms!, amps, load);
  const technology = rule.technologies[0] ?? "wirewound";
  const piece = {
    value: drop.ohms,
    tolerance: { minus: 0.05, plus: 0.05 },
    watts: drop.watts,
    volts: null,
    technology,
  };
  const farads = heaterDrop(string, "capacitor").farads!;
  return {
    aim: rule.valueMode === "ask" ? null : { pieces: [piece], text: writeValue(drop.ohms, "resistor") },
    choices: rule.valueMode === "ask" ? [...told, SCHOOLS[3]!] : [],
    figures: { ohms: drop.ohms, exactOhms: byResistor.ohms!, lostWatts: drop.lostWatts, watts: drop.watts, farads },
    because: [`${string.lineVolts} V less ${short(place.stringVolts)} V of heaters at ${short(amps)} A`],
  };
}

const SCHOOLS = [
  "a resistor in a ventilated box: (line − heaters) / current",
  "a half-wave diode, where the string wants about 0.707 of the line, fused: a shorted diode puts the whole line on it",
  "a series capacitor, class X or film motor-run with a bleed resistor, never motor-start",
  "a transformer for the heaters",
] as const;

function toldOf(string: Parameters<typeof heaterDrop>[0], method: DropMethod, load: number): string {
  return attempt(
    () => dropText(string, method, load),
    ({ problem }) => `${method}: not here, ${problem.wanted.toLowerCase()}`,
  );
}

function dropText(string: Parameters<typeof heaterDrop>[0], method: DropMethod, load: number): string {
  const found = heaterDrop(string, method);
  if (method === "capacitor")
    return `capacitor ${writeValue(Number(found.farads!.toPrecision(3)), "capacitor")}, class X or film motor-run with a bleed resistor, never motor-start`;
  const drop = dropResistor(found.ohms!, string.amperes, load);
  const resistor = `${writeValue(drop.ohms, "resistor")} ${drop.watts} W (burns ${short(drop.lostWatts)} W)`;
  return method === "diode" ? `diode (fused) and ${resistor}` : `resistor ${resistor} in a ventilated box`;
}
