import { figures } from "../quantity/figures.js";
import { writeValue } from "../quantity/writeValue.js";
import type { Aim, Piece } from "../ratings.js";
import { technologyOf } from "../rules/technologies.js";
import { bodyFor } from "./bodyFor.js";
import type { Need } from "./need.js";
import { wattsText } from "./wattsText.js";

const short = (number: number) => figures(Number(number.toPrecision(3)));

/** The volts there against a body that would have had the watts: "250 V would be all of a 1/2 W body's limit". */
function voltsAgainst(stress: number, watts: number, bears: number): string {
  const share = stress / bears;
  const body = `a ${wattsText(watts)} body's`;
  if (share > 1.005) return `${short(stress)} V is more than ${body} ${short(bears)} V`;
  return share > 0.995
    ? `${short(stress)} V would be all of ${body} limit`
    : `${short(stress)} V would be ${short(share * 100)} % of ${body} limit`;
}

/** Volts decide where they ask for a larger body than the watts do; else the watts. */
function ofResistor({ volts, watts }: Need, piece: Piece): string | null {
  const technology = technologyOf(piece.technology);
  const byWatts = technology
    ? bodyFor(technology, { watts: watts.want, mostWatts: null, leastVolts: null, wantVolts: null }).body
    : null;
  const larger = byWatts !== null && piece.watts !== null && piece.watts > byWatts.watts;
  if (larger && byWatts.volts !== null && volts.stress !== null)
    return voltsAgainst(volts.stress, byWatts.watts, byWatts.volts);
  return watts.because.length > 0 ? watts.because.join(", ") : (volts.because[0] ?? null);
}

/** What narrowed the value, else what raised the volts, else what the printed value is sold as. */
function ofCapacitor({ value, volts, part }: Need, piece: Piece): string | null {
  const [narrowed] = value.because;
  const [raised] = volts.because;
  const printed = part.volts?.value ?? null;
  const stocked =
    printed !== null && piece.volts !== null && piece.volts > printed * (1 + 1e-9) && volts.kind === "dc"
      ? `${short(printed)} V is sold as ${short(piece.volts)} V`
      : null;
  const { wanted } = value;
  const isOther = wanted !== null && piece.value !== null && Math.abs(piece.value / wanted - 1) > 1e-9;
  const sold = isOther
    ? `${writeValue(wanted, "capacitor")} is sold as ${writeValue(piece.value!, "capacitor")}`
    : null;
  const said = [narrowed, raised ?? stocked, narrowed ? null : sold].filter(
    (each) => each !== null && each !== undefined,
  );
  return said.length > 0 ? said.join(", ") : null;
}

/** What no single part could do, and what narrowed the value on the way. */
function ofSeveral({ value, volts }: Need, found: readonly string[]): string | null {
  const said = [...value.because, ...(volts.beyond ? volts.because : []), ...found.slice(0, 1)];
  return said.length > 0 ? said.join(", ") : null;
}

/**
 * The limit that decides what is aimed at, in a few words; null where the part is simply bought as it was.
 *
 * A resistor's body by its volts where those ask for more than the watts, a capacitor by what narrowed its value or raised
 * its volts, several pieces by what no single one could do.
 *
 * @param found What was said on the way to the aim.
 * @example decidingLimit(need, aim, []) // "250 V would be all of a 1/2 W body's limit"
 */
export function decidingLimit(need: Need, aim: Aim | null, found: readonly string[]): string | null {
  const [piece, second] = aim?.pieces ?? [];
  if (!piece) return found[0] ?? null;
  if (second) return ofSeveral(need, found);
  if (need.rule.safety !== null) return found[0] ?? null;
  if (need.part.kind === "resistor") return ofResistor(need, piece);
  if (need.part.kind === "capacitor") return ofCapacitor(need, piece);
  return need.volts.because[0] ?? found[0] ?? null;
}
