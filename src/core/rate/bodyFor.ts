import { figures } from "../quantity/figures.js";
import type { Rejected } from "../ratings.js";
import { usualBodyVolts } from "../rules/bodyVolts.js";
import type { Technology } from "../rules/technology.js";

/** What a body must bear: the watts of its rating, and the volts its style must allow (`want` where they are not demanded). */
export type BodyNeed = {
  readonly watts: number | null;
  readonly mostWatts: number | null;
  readonly leastVolts: number | null;
  readonly wantVolts: number | null;
};

/** Bodies turned down that are worth a word. */
const TOLD = 2;

/** A body that is made: rated watts and the volts it bears; null where only sqrt(P R) limits it. */
export type Body = { readonly watts: number; readonly volts: number | null };

/** The body that serves, and the smaller ones that were turned down. */
export type BodyChoice = { readonly body: Body | null; readonly rejected: readonly Rejected[] };

const bears = ({ volts }: Body, needed: number | null) =>
  needed === null || volts === null || volts >= needed * (1 - 1e-9);

/**
 * The smallest body of a technology that has the watts and bears the volts.
 *
 * Volts come before watts: half a watt of small film may have watts to spare and still be at its limit at 250 V.
 *
 * @example bodyFor(technologyOf("metal_film")!, { watts: 0.5, mostWatts: null, leastVolts: 312.5, wantVolts: 312.5 }).body // { watts: 1, volts: 350 }
 */
export function bodyFor(technology: Technology, need: BodyNeed): BodyChoice {
  const made = (technology.made?.watts ?? []).map((watts) => ({ watts, volts: usualBodyVolts(technology.id, watts) }));
  const strong = made.filter(
    ({ watts }) => (need.watts === null || watts >= need.watts) && (need.mostWatts === null || watts <= need.mostWatts),
  );
  const serving = strong.filter((body) => bears(body, need.leastVolts));
  const body = serving.find((each) => bears(each, need.wantVolts)) ?? serving[0] ?? null;
  const smaller = body === null ? strong : made.filter(({ watts }) => watts < body.watts);
  const weak = smaller.filter((each) => !bears(each, need.leastVolts)).slice(-TOLD);
  const rejected = weak.map(({ watts, volts }) => ({
    what: `${figures(watts)} W ${technology.label.toLowerCase()}`,
    why: `its body bears ${volts} V, ${figures(Number(need.leastVolts!.toPrecision(4)))} V is needed`,
  }));
  return { body, rejected };
}
