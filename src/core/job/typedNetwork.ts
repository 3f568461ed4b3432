import { type Network, networkValue, partsOf } from "../compose/network.js";
import { readNetwork } from "../compose/networkText.js";
import { sharesOf } from "../compose/shares.js";
import type { Tolerance } from "../part.js";
import type { Piece, Ratings } from "../ratings.js";

/** Whether a new value's text is made up of several: 1.6 M + 1.6 M, 220 p || 30 p. */
export const isMadeUp = (text: string): boolean => /\+|\||∥/.test(text);

/**
 * The pieces of a made-up value that the user gives for a part, in the order they are written: each bears its share of the
 * part's least watts and volts, and none is of wider tolerance than the whole may be.
 *
 * @throws PartsError "unreadable" where the text is no network.
 * @example typedNetwork("1.6 M + 1.6 M", ratings).map(({ value }) => value) // [1_600_000, 1_600_000]
 */
export function typedNetwork(text: string, ratings: Ratings): readonly Piece[] {
  const network = readNetwork(text, ratings.kind);
  const tolerance = toleranceWithin(ratings, network);
  const technology = ratings.aim?.pieces[0]?.technology ?? ratings.technologies[0] ?? "";
  const shares = sharesOf(network, ratings.kind);
  const part = (figure: number | null, share: number) => (figure === null ? null : rounded(figure * share));
  return partsOf(network).map((value, i) => ({
    value,
    tolerance,
    watts: part(ratings.leastWatts, shares[i]!.power),
    volts: part(ratings.leastVolts, shares[i]!.volts),
    technology,
  }));
}

/** Without the dust of binary fractions, for figures that stand in reasons. */
const rounded = (figure: number) => Number(figure.toPrecision(4));

/** The widest tolerance of the pieces that keeps the whole within the old limits, where the part is held to them. */
function toleranceWithin({ gate, old, tolerance, kind }: Ratings, network: Network): Tolerance | null {
  if (gate !== "contained" || old === null) return tolerance;
  const whole = networkValue(network, kind);
  const room = Math.max(0, Math.min(1 - old.min / whole, old.max / whole - 1));
  return { minus: Math.min(room, tolerance?.minus ?? room), plus: Math.min(room, tolerance?.plus ?? room) };
}
