import { bodyFits } from "../circuit/bodyFits.js";
import type { Kind } from "../part.js";
import type { FitSaid, Piece, Ratings } from "../ratings.js";
import { BODIES, type Body } from "../rules/bodies.js";

/** Bodies by technology: which rows of the table of bodies show a technology's size. */
const BODY_TYPES: Readonly<Record<string, string>> = {
  carbon_film: "film_modern",
  metal_film: "film_modern",
  metal_film_large: "film_modern",
  metal_oxide: "film_modern",
  carbon_comp_new: "carbon_comp_old",
  wirewound: "ww_modern_axial",
  metal_clad: "metal_clad",
  polyester: "film_axial",
  polypropylene: "film_axial",
  pp_film_foil: "pp_axial",
  alu_axial: "alu_axial",
  alu_radial: "alu_radial",
  y_class: "disc_y2",
  x_class: "x2_box",
  carbon_comp: "carbon_comp_old",
  paper_wax: "paper_wax_old",
  paper_moulded: "paper_moulded_old",
};

/** A lead as thin as this wants sleeving and both ends anchored between old tags. Common practice. */
const THIN_LEAD_METRES = 0.0006;
/** Bend at each end of a body between tags. */
const BEND_METRES = 0.003;

/**
 * The usual body of a technology (or old class) that has at least the watts, or the value and volts, asked for; null
 * where the table has none.
 */
export function usualBody(
  name: string,
  part: {
    readonly kind: Kind;
    readonly value: number | null;
    readonly watts: number | null;
    readonly volts: number | null;
  },
): Body | null {
  const rows = BODIES.filter(({ type }) => type === BODY_TYPES[name]);
  const enough = (body: Body) =>
    part.kind === "resistor"
      ? (body.watts ?? 0) >= (part.watts ?? Number.POSITIVE_INFINITY)
      : (body.value ?? 0) >= (part.value ?? Number.POSITIVE_INFINITY) && (body.volts ?? 0) >= (part.volts ?? 0);
  return rows.find(enough) ?? null;
}

const millimetres = (metres: number) => `${Math.round(metres * 1e4) / 10} mm`;

/**
 * Whether a new part goes into a room: fits, tight, or unknown where either size is not known.
 *
 * The room is the chassis' or, with the setting `hide_new_parts` at restuff, the inside of the old shell; sizes of the
 * table are usual ones, makers differ. A new body between tags needs a bend of 3 mm at each end, in a shell its leads go
 * straight out; a thin lead is told.
 *
 * @param room Metres; null where nobody measured it.
 * @param isShell Whether the room is the inside of the old shell.
 * @example fitOf(piece, "capacitor", { lengthMetres: 0.038, diameterMetres: 0.014 }).fit // "fits"
 */
export function fitOf(piece: Piece, kind: Kind, room: Ratings["room"], isShell = false): FitSaid {
  const body = usualBody(piece.technology, { ...piece, kind: piece.kind ?? kind });
  if (body === null) return { fit: "unknown", because: "its usual size is not known: measure it" };
  const where = isShell ? "the old shell's inside" : "the room";
  const size = `usually ${millimetres(body.lengthMetres)} by ${millimetres(body.diameterMetres)}`;
  if (!room || room.lengthMetres === null || room.diameterMetres === null)
    return { fit: "unknown", because: `${size}; ${where} is not known` };
  const { lengthMetres, diameterMetres } = room;
  const { fits, lengthLeftMetres, diameterLeftMetres } = bodyFits(body, { lengthMetres, diameterMetres });
  const thin = (body.leadMetres ?? 1) <= THIN_LEAD_METRES ? "; thin leads: sleeve them and anchor both ends" : "";
  const bends = isShell ? 0 : 2 * BEND_METRES;
  if (fits && lengthLeftMetres >= bends) return { fit: "fits", because: `${size}${thin}` };
  if (fits) return { fit: "tight", because: `${size}: no room for the bends${thin}` };
  const short = Math.max(-lengthLeftMetres, -diameterLeftMetres);
  return { fit: "tight", because: `${size}: ${millimetres(short)} more than ${where} has${thin}` };
}

/** How what is aimed at goes into its room; null where nobody asks: no room told and nothing to be hidden, or nothing aimed at. */
export function fitOfAim(
  { kind, aim, room }: Pick<Ratings, "kind" | "aim" | "room">,
  isShell: boolean,
): FitSaid | null {
  const [piece, second] = aim?.pieces ?? [];
  if (!piece || (room === null && !isShell)) return null;
  return second ? { fit: "unknown", because: "several pieces: lay them out" } : fitOf(piece, kind, room, isShell);
}
