import { writeTolerance } from "../quantity/tolerance.js";
import { usualBodyVolts } from "../rules/bodyVolts.js";
import { type Check, met, out, over, tight } from "./note.js";
import { technologyRank } from "./technology.js";

/** Twice what is needed and more is told as over: it fits, but body and price grow with it. */
const OVER = 2;

/** Watts: not below the least, not above the most (a fusible part must open), and told when short of what was aimed at. */
export const checkWatts: Check = (ratings, offer) => {
  const { leastWatts, wantWatts, mostWatts } = ratings;
  if (leastWatts === null && mostWatts === null) return met;
  if (offer.watts === null) return out("watts", `watts not stated, ${leastWatts ?? mostWatts} W needed`);
  if (leastWatts !== null && offer.watts < leastWatts)
    return out("watts", `${offer.watts} W where ${leastWatts} W is needed`);
  if (mostWatts !== null && offer.watts > mostWatts)
    return out("watts", `${offer.watts} W where ${mostWatts} W is the most`);
  if (wantWatts !== null && offer.watts < wantWatts)
    return tight("watts", `${offer.watts} W is enough, ${wantWatts} W was aimed at`);
  const asked = wantWatts ?? leastWatts;
  return asked !== null && offer.watts > OVER * asked
    ? over("watts", `${offer.watts} W, ${asked} W was asked for: a larger body`)
    : met;
};

/**
 * Volts: a capacitor's working volts of the right kind, or what a resistor's body bears.
 *
 * A d.c. rating never serves an a.c. place. An a.c. rating serves a d.c. place with its own number, which is on the safe
 * side. A resistor's list seldom states volts: what its technology and watts commonly bear stands in, and is told.
 */
export const checkVolts: Check = (ratings, offer, pieces) => {
  const { leastVolts, wantVolts } = ratings;
  if (leastVolts === null) return met;
  if (offer.volts === null) return unstatedVolts(ratings, offer, pieces);
  if (ratings.voltsKind === "ac" && offer.voltsKind !== "ac")
    return out("volts", `${offer.volts} V is a d.c. rating, the place is a.c.`);
  if (offer.volts < leastVolts) return out("volts", `${offer.volts} V where ${leastVolts} V is needed`);
  if (wantVolts !== null && offer.volts < wantVolts)
    return tight("volts", `${offer.volts} V is enough, ${wantVolts} V was aimed at`);
  const asked = wantVolts ?? leastVolts;
  return offer.volts > OVER * asked ? over("volts", `${offer.volts} V, ${asked} V was asked for: a larger body`) : met;
};

const unstatedVolts: Check = (ratings, offer) => {
  const least = ratings.leastVolts!;
  if (ratings.kind !== "resistor") return out("volts", `volts not stated, ${least} V needed`);
  const technology = ratings.technologies[technologyRank(ratings, offer) ?? -1];
  const usual = technology === undefined ? null : usualBodyVolts(technology, offer.watts ?? 0);
  if (usual !== null && usual < least)
    return out("volts", `volts not stated; such a body commonly bears ${usual} V, ${least} V is needed`);
  return tight("volts", `volts not stated: see that its body bears ${least} V`);
};

/** Tolerance: no wider than asked; one that is not stated is told. */
export const checkTolerance: Check = ({ tolerance: asked }, { tolerance }) => {
  if (asked === null) return met;
  if (tolerance === null) return tight("tolerance", "tolerance not stated");
  const wider = tolerance.minus > asked.minus + 1e-9 || tolerance.plus > asked.plus + 1e-9;
  return wider ? out("tolerance", `${writeTolerance(tolerance)} where ${writeTolerance(asked)} is needed`) : met;
};
