import type { Offer } from "../offer.js";
import { technologyOf } from "../rules/technologies.js";
import { type Check, care, met, type Note, out, tight } from "./note.js";
import { MEASURED_FIRST, sameCode, technologyRank } from "./technology.js";

/** Technology: one of the rule's; composition and old stock are read on the meter first, since unused parts drift on the shelf too. */
export const checkTechnology: Check = (ratings, offer) => {
  const rank = technologyRank(ratings, offer);
  if (rank === null) {
    const asked = ratings.technologies.map((id) => technologyOf(id)?.label ?? id).join(" or ");
    return out("technology", `${offer.technology.join(", ") || "type not stated"}; wanted: ${asked}`);
  }
  const first = offer.newOldStock || MEASURED_FIRST.includes(ratings.technologies[rank] ?? "");
  return first ? care("technology", "measure before fitting") : met;
};

/** The safety class a line place demands: a Y part serves an X place, never the other way round. @source IEC 60384-14 */
export const checkSafety: Check = ({ safety }, { safetyClass }) => {
  if (safety === null) return met;
  const fits = safety === "Y" ? /Y/i : /[XY]/i;
  return fits.test(safetyClass ?? "")
    ? met
    : out("safety", `${safetyClass ? `class ${safetyClass}` : "no safety class"} where class ${safety} is needed`);
};

/** Temperature code: the same, in any of its writings. */
export const checkTemperature: Check = ({ temperatureCoefficient: asked }, { temperatureCoefficient: code }) => {
  if (asked === null || sameCode(asked, code)) return met;
  return out("temperature", `temperature code ${code ?? "not stated"} where ${asked} is needed`);
};

const TAPERS: Readonly<Record<string, string>> = { audio: "log", logarithmic: "log", lin: "linear" };

/** Taper of a control: audio and log are one. */
export const checkTaper: Check = ({ taper: asked }, { taper }) => {
  if (asked === null) return met;
  if (taper === null) return tight("taper", `taper not stated, ${asked} wanted`);
  const plain = (word: string) => TAPERS[word.toLowerCase()] ?? word.toLowerCase();
  return plain(asked) === plain(taper) ? met : out("taper", `${taper} taper where ${asked} is needed`);
};

/** Room: the body in the space there is; a size that is not stated is told. */
export const checkSize: Check = ({ room }, offer) => {
  if (room === null) return met;
  return [
    ...dimension("long", room.lengthMetres, offer.lengthMetres),
    ...dimension("thick", room.diameterMetres, offer.diameterMetres),
  ];
};

function dimension(word: string, most: number | null, metres: number | null): readonly Note[] {
  if (most === null) return met;
  const millimetres = (length: number) => `${Number((length * 1000).toFixed(1))} mm`;
  if (metres === null) return tight("size", `size not stated: ${millimetres(most)} ${word} at most`);
  return metres <= most
    ? met
    : out("size", `${millimetres(metres)} ${word} where there is room for ${millimetres(most)}`);
}

/** Why an offer can't be had at all, whoever asks; null where it can. */
export function soldOut({ stock, status }: Offer): string | null {
  if (stock === 0) return "none in stock";
  if (status === "out-of-stock") return "out of stock";
  return status === "discontinued" && stock === null ? "no longer made" : null;
}

/** Supply: what can still be had, and whether it is enough for what is wanted. */
export const checkSupply: Check = (_ratings, offer, pieces) => {
  const gone = soldOut(offer);
  if (gone) return out("supply", gone);
  const inStock = offer.stock === null ? null : offer.stock * offer.pack;
  return [
    ...(offer.status === "last-time-buy" ? tight("supply", "last chance to buy") : met),
    ...(offer.status === "discontinued" ? tight("supply", `no longer made, ${inStock} left`) : met),
    ...(inStock !== null && inStock < pieces ? tight("supply", `only ${inStock} of ${pieces} in stock`) : met),
    ...offer.warnings.map((warning): Note => ({ limit: "supply", weight: "care", text: warning.text })),
  ];
};
