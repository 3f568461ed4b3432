import type { Offer } from "../offer.js";
import type { Ratings } from "../ratings.js";
import { technologyOf } from "../rules/technologies.js";

/** The length of an old half-watt composition body, metres: 9.5 mm (RC20 size of the generic data sheets). */
const OLD_HALF_WATT_METRES = 0.0095;

/** Class 1 ceramics carry a linear code (NP0, N750, P100); class 2 and 3 codes end in a letter of spread (X7R, Z5U). */
const CLASS_1 = /^(NP0|NPO|C0G|[NP]\d+)$/i;

const says = (words: RegExp) => (offer: Offer) => words.test(offer.description);

/** What a technology asks beyond its words, by id: the machine form of its `also` in the table of technologies. */
const ALSO: Readonly<Record<string, (offer: Offer, ratings: Ratings) => boolean>> = {
  metal_film_large: ({ lengthMetres, watts }) =>
    lengthMetres === null ? (watts ?? 0) >= 1 : lengthMetres >= OLD_HALF_WATT_METRES,
  ceramic_comp: says(/\bceramic\b|\bpulse\b/i),
  hv_metal_glaze: ({ volts }) => (volts ?? 0) > 1000,
  pp_film_foil: (offer) => offer.voltsKind === "ac" || /\bpulse\b|\bfoil\b|dv\/dt/i.test(offer.description),
  np0: ({ temperatureCoefficient: code }, ratings) =>
    code !== null && (/^(NP0|NPO|C0G)$/i.test(code) || sameCode(code, ratings.temperatureCoefficient)),
  class2: ({ temperatureCoefficient: code }) => code === null || !CLASS_1.test(code),
  y_class: ({ safetyClass }) => /Y/i.test(safetyClass ?? ""),
  x_class: ({ safetyClass }) => /[XY]/i.test(safetyClass ?? ""),
  film_dc: ({ value }) => (value ?? 0) >= 1e-6,
  bipolar: says(/\bnon-?\s?polar|\bbi-?\s?polar|\bunpolari[sz]ed/i),
  schottky_small: says(/\bschottky\b/i),
  same: ({ newOldStock }) => newOldStock,
};

/** Technologies that are read on the meter before they are fitted, whoever sells them. */
export const MEASURED_FIRST: readonly string[] = ["carbon_comp_new", "germanium", "same"];

/** Whether two temperature codes are one: NP0, NPO and C0G are three writings of the same. @source IEC 60384-8 */
export function sameCode(a: string | null, b: string | null): boolean {
  const plain = (code: string | null) => (code ?? "").toUpperCase().replace(/^(NPO|C0G|COG)$/, "NP0");
  return plain(a) === plain(b);
}

/**
 * The first technology of the rule's order that the offer is, as a position in `ratings.technologies`; null when it is none of them.
 *
 * A technology fits when the offer carries all its words and meets what else it asks. An empty order takes anything: 0.
 */
export function technologyRank(ratings: Ratings, offer: Offer): number | null {
  if (ratings.technologies.length === 0) return 0;
  const rank = ratings.technologies.findIndex((id) => isOf(id, ratings, offer));
  return rank < 0 ? null : rank;
}

function isOf(id: string, ratings: Ratings, offer: Offer): boolean {
  const technology = technologyOf(id);
  if (!technology) return false;
  return technology.words.every((word) => offer.technology.includes(word)) && (ALSO[id]?.(offer, ratings) ?? true);
}
