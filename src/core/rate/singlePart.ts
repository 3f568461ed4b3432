import { writeValue } from "../quantity/writeValue.js";
import type { Piece, Rejected } from "../ratings.js";
import type { Technology } from "../rules/technology.js";
import { bodyFor } from "./bodyFor.js";
import type { Need } from "./need.js";
import { type Picked, pickValue } from "./pickValue.js";

/** One part in a technology that meets everything, or why there is none; `blocked` says whether values or volts stood in the way. */
export type Single = {
  readonly piece: Piece | null;
  readonly picked: Picked | null;
  readonly blocked: "value" | "body" | null;
  readonly rejected: readonly Rejected[];
};

const refused = (blocked: "value" | "body", technology: Technology, why: string): Single => ({
  piece: null,
  picked: null,
  blocked,
  rejected: [{ what: technology.label, why }],
});

/** One part that meets value, watts and volts in a technology that is usually made so. */
export function singlePart(need: Need, technology: Technology): Single {
  const picked = pickValue(need, technology);
  const wanted = need.value.wanted;
  if (picked === null) {
    const text = wanted === null ? "the value" : writeValue(wanted, need.part.kind);
    return refused("value", technology, `has no stock value that serves for ${text}`);
  }
  const made = technology.made;
  if (made && (picked.value < made.min * (1 - 1e-9) || picked.value > made.max * (1 + 1e-9)))
    return refused("value", technology, `is not usually made at ${writeValue(picked.value, need.part.kind)}`);
  return need.part.kind === "resistor" && made?.watts
    ? withBody(need, technology, picked)
    : withVolts(need, technology, picked);
}

function withBody(need: Need, technology: Technology, picked: Picked): Single {
  const { watts, volts } = need;
  const choice = bodyFor(technology, {
    watts: watts.want,
    mostWatts: watts.most,
    leastVolts: volts.least,
    wantVolts: volts.want,
  });
  const body = choice.body;
  if (body === null) {
    const why = watts.want === null ? "no body bears the volts" : `no body of ${watts.want} W or more bears it`;
    return { ...refused("body", technology, why), rejected: [...choice.rejected, { what: technology.label, why }] };
  }
  const { value, tolerance } = picked;
  const piece = { value, tolerance, watts: body.watts, volts: body.volts, technology: technology.id };
  return { piece, picked, blocked: null, rejected: choice.rejected };
}

function withVolts(need: Need, technology: Technology, picked: Picked): Single {
  if (need.volts.beyond) return refused("body", technology, `is not made for ${Math.ceil(need.volts.least!)} V`);
  const { value, tolerance } = picked;
  const watts = need.part.kind === "resistor" ? need.watts.want : null;
  const piece = { value, tolerance, watts, volts: need.volts.want, technology: technology.id };
  return { piece, picked, blocked: null, rejected: [] };
}
