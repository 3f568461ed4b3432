import type { Kind, Part } from "../part.js";
import type { FitSaid, Piece, Ratings } from "../ratings.js";
import type { Body } from "../rules/bodies.js";
import { usualBody } from "./usualBody.js";

/** A lead as thin as this wants sleeving and both ends anchored between old tags. Common practice. */
const THIN_LEAD_METRES = 0.0006;
/** Bend at each end of a body between tags. */
const BEND_METRES = 0.003;
/** How far the leads of a new part reach beyond its body on each side. From memory, makers differ. */
const LEAD_METRES = 0.025;
/** A resistor that gets hot is stood off boards and wax: from these watts, by this much. Common practice. */
const HOT_WATTS = 1;
const STAND_OFF_METRES = 0.005;

/** What a new body is held against: the room there is, whether that is the old shell's inside, and the old body, where known. */
export type FitAsked = {
  readonly room: Ratings["room"];
  readonly isShell?: boolean;
  readonly old?: Body | null;
};

const millimetres = (metres: number) => `${Math.round(metres * 1e4) / 10} mm`;

const sizeText = ({ lengthMetres, diameterMetres, leadMetres }: Body) =>
  `${millimetres(lengthMetres)} by ${millimetres(diameterMetres)}${leadMetres ? `, leads ${millimetres(leadMetres)}` : ""}`;

/** One way a body may not go in: what is missing of it in metres (below zero it goes in), and of what. */
type Short = { readonly metres: number; readonly where: string };

const standOffOf = (piece: Piece, kind: Kind) =>
  kind === "resistor" && (piece.watts ?? 0) >= HOT_WATTS ? STAND_OFF_METRES : 0;

/** What is known to be missing, by length, thickness and span of the tags; what nobody measured says nothing. */
function shortfalls(body: Body, { room, isShell = false }: FitAsked, standOff: number): readonly Short[] {
  const bends = isShell ? 0 : 2 * BEND_METRES;
  const where = isShell ? "the old shell's inside" : "the room";
  const against = (had: number | null | undefined, needed: number, of: string): readonly Short[] =>
    had === null || had === undefined ? [] : [{ metres: needed - had, where: of }];
  return [
    ...against(room?.lengthMetres, body.lengthMetres + bends, where),
    ...against(room?.diameterMetres, body.diameterMetres + (isShell ? 0 : standOff), where),
    ...(isShell ? [] : against(room?.spanMetres, body.lengthMetres + bends, "the span of the tags")),
  ];
}

/** What to mind of the leads and the heat, whether it goes in or not. */
function minded(body: Body, { room, isShell = false, old = null }: FitAsked, standOff: number): string {
  const lead = body.leadMetres;
  const isThin = lead !== null && (lead <= THIN_LEAD_METRES || lead < (old?.leadMetres ?? 0));
  const span = room?.spanMetres ?? null;
  const reach = body.lengthMetres + 2 * LEAD_METRES;
  return [
    isThin ? "thin leads: sleeve them and anchor both ends" : "",
    !isShell && standOff > 0 ? `stand it ${millimetres(standOff)} off` : "",
    !isShell && span !== null && span > reach ? `its leads do not reach over ${millimetres(span)}: lengthen them` : "",
  ]
    .filter(Boolean)
    .map((each) => `; ${each}`)
    .join("");
}

/**
 * Whether a new part goes into its place: fits, tight, or unknown where what decides is not known.
 *
 * The room is the chassis' or, with the setting `hide_new_parts` at restuff, the inside of the old shell; where nobody
 * measured it, a body no larger than the old one fits where that one sat. Sizes of the table are usual ones, makers
 * differ. Between tags a body needs a bend of 3 mm at each end and the tags as far apart, a hot resistor 5 mm of air; in a
 * shell the leads go straight out. Thin leads, and leads that do not reach, are told.
 *
 * @param asked Room in metres, each null where nobody measured it.
 * @example fitOf(piece, "capacitor", { room: { lengthMetres: 0.038, diameterMetres: 0.014 } }).fit // "fits"
 */
export function fitOf(piece: Piece, kind: Kind, asked: FitAsked): FitSaid {
  const own = piece.kind ?? kind;
  const body = usualBody(piece.technology, { ...piece, kind: own });
  if (body === null) return { fit: "unknown", because: "its usual size is not known: measure it" };
  const { room, isShell = false, old = null } = asked;
  const standOff = standOffOf(piece, own);
  const size = `usually ${sizeText(body)}${old ? ` (the old one ${sizeText(old)})` : ""}`;
  const more = minded(body, asked, standOff);
  const [worst] = [...shortfalls(body, asked, standOff)].sort((a, b) => b.metres - a.metres);
  if (worst && worst.metres > 1e-9)
    return { fit: "tight", because: `${size}: ${millimetres(worst.metres)} more than ${worst.where} has${more}` };
  const isRoomKnown = (room?.lengthMetres ?? null) !== null && (room?.diameterMetres ?? null) !== null;
  if (isRoomKnown) return { fit: "fits", because: `${size}${more}` };
  const isSmaller = old !== null && body.lengthMetres <= old.lengthMetres && body.diameterMetres <= old.diameterMetres;
  if (isSmaller && !isShell) return { fit: "fits", because: `${size}: no larger than the old one${more}` };
  const where = isShell ? "the old shell's inside" : "the room";
  return { fit: "unknown", because: `${size}; ${where} is not known${more}` };
}

/** How what is aimed at goes into its place; null where nobody asks and no old body is known, or nothing is aimed at. */
export function fitOfAim(part: Part, { aim, room }: Pick<Ratings, "aim" | "room">, isShell: boolean): FitSaid | null {
  const [piece, second] = aim?.pieces ?? [];
  const old = usualBody(part.className.value, {
    kind: part.kind,
    value: part.value?.value ?? null,
    watts: part.watts?.value ?? null,
    volts: part.volts?.value ?? null,
  });
  if (!piece || (room === null && !isShell && old === null)) return null;
  if (second) return { fit: "unknown", because: "several pieces: lay them out" };
  return fitOf(piece, part.kind, { room, isShell, old });
}
