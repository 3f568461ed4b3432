import type { Kind, Reading } from "../../core/index.js";
import type { Case } from "./case.js";
import type { Figure, Given } from "./given.js";

/** Whether a reading was taken in place, by its flag or, without one, by the words of the context. */
function takenInPlace({ context = "" }: Case, { rest }: Given): boolean {
  const flag = rest.inCircuit ?? rest.inPlace ?? (typeof rest.lifted === "boolean" ? !rest.lifted : null);
  return typeof flag === "boolean" ? flag : /not lifted|in circuit|in place/i.test(context);
}

const STATES: Readonly<Record<string, number>> = { open: Number.POSITIVE_INFINITY, short: 0, shorted: 0 };

/** The readings of a case: of the value, of insulation, leakage and ESR. */
export function readingsOf(one: Case, given: Given, kind: Kind, figure: Figure): readonly Reading[] {
  const accuracy = figure("accuracy");
  const inPlace = takenInPlace(one, given);
  const reading = (quantity: Reading["quantity"], value: number | null): readonly Reading[] =>
    value === null ? [] : [{ quantity, value, inPlace, accuracy }];
  const own = kind === "capacitor" ? "capacitance" : "resistance";
  return [
    ...reading(own, figure("reading")),
    ...reading("insulation", figure("insulation")),
    ...reading("leakage", figure("leakage")),
    ...reading("ESR", figure("esr")),
    ...reading("resistance", STATES[String(given.rest.reading)] ?? null),
  ];
}
