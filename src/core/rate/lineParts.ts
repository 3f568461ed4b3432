import { faradsForLeak, lineLeak } from "../circuit/lineLeak.js";
import { figures } from "../quantity/figures.js";
import { nearest } from "../quantity/nearest.js";
import { SERIES } from "../quantity/series.js";
import { writeValue } from "../quantity/writeValue.js";
import type { Rejected } from "../ratings.js";
import type { Settings } from "../rule.js";
import type { Need } from "./need.js";

/** What a place at the line adds: the current that flows, answers to choose from, and what may not stand there. */
export type LinePart = {
  readonly choices: readonly string[];
  readonly figures: Readonly<Record<string, number>>;
  readonly rejected: readonly Rejected[];
  readonly because: readonly string[];
};

/** Farads that forums call usual from line to chassis, and from which a class X part needs a bleed resistor (IEC 60950-1 2.1.1.7). */
const USUAL_FARADS = 4.7e-9;
const BLEED_FROM_FARADS = 0.1e-6;
/** Class Y parts are stocked within 20 %. */
const WORST = 1.2;
/** From the peak of 132 V down to 34 V in one second takes 1.70 time constants (worked out in the safety references). */
const TIME_CONSTANTS = 1.703;

const milli = (amps: number) => `${figures(Number((amps * 1000).toPrecision(3)))} mA`;

/** The current a capacitor passes from today's line. */
export function leakOf(farads: number, settings: Settings): number {
  return lineLeak({ farads, volts: Number(settings.line_now_V), hertz: Number(settings.line_hz) });
}

const NOT_X: Rejected = {
  what: "a part marked class X alone",
  why: "it may not stand where its short makes metal live",
};
const UNMARKED: readonly Rejected[] = [
  { what: "a d.c. film capacitor of any voltage", why: "it is not made or tested for the line" },
  { what: "a ceramic disc without a class mark", why: "volts alone do not make it safe at the line" },
];

/** Current, choices and refusals of a capacitor that a safety class is demanded for. */
export function linePart(need: Need): LinePart {
  const farads = need.value.wanted;
  const { safety, roleRow } = need.rule;
  const rejected = safety === "Y" ? [...UNMARKED, NOT_X] : UNMARKED;
  if (farads === null || safety === null) return { choices: [], figures: {}, rejected, because: [] };
  if (safety === "X") return { choices: [], figures: {}, rejected, because: [...polar(need), ...bleeding(farads)] };
  const leakAmps = leakOf(farads, need.settings);
  const worstLeakAmps = leakAmps * WORST;
  const line = `${need.settings.line_now_V} V ${need.settings.line_hz} Hz`;
  const passes = `${writeValue(farads, "capacitor")} passes ${milli(leakAmps)} at ${line}, ${milli(worstLeakAmps)} if it is 20 % high`;
  const barrier = roleRow.id === "antenna_isolation" || need.place.onlyBarrier;
  const because = [
    passes,
    ...(barrier ? ["this part alone stands between line and hand: Y1, or two Y2 in series"] : []),
  ];
  return { choices: choicesOf(need, leakAmps), figures: { leakAmps, worstLeakAmps }, rejected, because };
}

/** Classes of electrolytics that have a plus and a minus. */
const POLAR: readonly string[] = ["elec_single", "elec_multi", "elec_can_insulated", "elec_bias", "tantalum"];

/** A polar part can't stand where the volts turn over. */
function polar({ rule }: Need): readonly string[] {
  if (!POLAR.includes(rule.classRow.id)) return [];
  return ["an electrolytic with a plus and a minus does not stand across the line: trace it again before you buy"];
}

function bleeding(farads: number): readonly string[] {
  if (farads <= BLEED_FROM_FARADS * (1 + 1e-9)) return [];
  const most = nearest(1 / (TIME_CONSTANTS * farads), SERIES.E12, "not above");
  return [
    `over 0.1 µF it keeps the plug charged: a bleed resistor of ${writeValue(most, "resistor")} or less across it`,
  ];
}

/** The answers of which the user takes one: where the rule asks, or the current passes what raises a caution. */
function choicesOf(need: Need, leakAmps: number): readonly string[] {
  const { settings, value } = need;
  const limit = Number(settings.line_leak_mA) / 1000;
  if (value.mode !== "ask" && (need.rule.roleRow.id !== "line_to_chassis" || leakAmps <= limit)) return [];
  const most = faradsForLeak({ amperes: limit, volts: Number(settings.line_now_V), hertz: Number(settings.line_hz) });
  const largest = nearest(most, SERIES.E6, "not above");
  const lower = [largest, USUAL_FARADS].map(
    (farads) => `${writeValue(farads, "capacitor")} class Y, ${milli(leakOf(farads, settings))}`,
  );
  if (value.mode !== "ask") return lower;
  return [
    `${lower[0]}: may hum or tune oddly`,
    "0.047 to 0.1 µF class Y where it is sold",
    `${writeValue(value.wanted!, "capacitor")} only where marked class Y (rare; ${milli(leakAmps)}), with a polarised plug and the switch in the hot lead`,
  ];
}
