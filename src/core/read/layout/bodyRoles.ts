import { unitNamed } from "../../quantity/notation/units.js";
import { firstsUnder, headOver } from "./columns.js";
import { isUnitHead, roleOfHead } from "./heads.js";
import type { Strip } from "./pieces.js";
import type { Head, Piece, Role } from "./row.js";

const MOSTLY = 0.5;

/** Whether most of the texts that a column holds are so. */
const mostly = (texts: readonly string[], are: (text: string) => boolean) =>
  texts.length > 0 && texts.filter(are).length > texts.length * MOSTLY;

const isUnit = (text: string) => unitNamed(text) !== undefined;
const isName = (text: string) => /\p{L}{3}/u.test(text);

/**
 * The heads with what their columns hold where words alone leave it open: "Unit" over units, not over assemblies; the
 * column that names the things, under "Item" or a head that nobody knows, where no other describes them.
 */
export function rolesByBody(heads: readonly Head[], body: readonly Strip[]): Head[] {
  const settled = heads.map((head): Head => {
    const isOfUnits = isUnitHead(head.text) && mostly(firstsUnder(heads, head, body), isUnit);
    return isOfUnits ? { ...head, role: "unit" } : head;
  });
  const has = (role: Role) => settled.some((head) => head.role === role);
  if (has("description")) return settled;
  const names = (head: Head) => mostly(firstsUnder(settled, head, body), isName);
  const item = settled.find((head) => head.role === "item" && names(head));
  const strange = has("value") || has("rating") ? undefined : settled.find((head) => isStrange(head) && names(head));
  const found = item ?? strange;
  return settled.map((head) => (head === found ? { ...head, role: "description" } : head));
}

const isStrange = (head: Head) => head.role === "remarks" && roleOfHead(head.text) === null;

const MEASURED: ReadonlySet<Role> = new Set<Role>(["value", "rating", "watts", "volts"]);

/** A strip with the units of a column of their own written behind the numbers that stand to their left. */
export function withUnitsJoined(heads: readonly Head[], strip: Strip): Strip {
  if (!heads.some((head) => head.role === "unit")) return strip;
  const headOf = (piece: Piece) => headOver(heads, strip, piece);
  const units = new Map<Head, string>();
  for (const piece of strip.pieces) {
    const own = headOf(piece);
    const measured = heads
      .slice(0, own ? heads.indexOf(own) : 0)
      .filter((head) => MEASURED.has(head.role))
      .at(-1);
    if (own?.role === "unit" && measured && piece.text.trim() !== "") units.set(measured, piece.text.trim());
  }
  const pieces = strip.pieces.flatMap((piece): Piece[] => {
    const own = headOf(piece);
    if (own?.role === "unit") return [];
    const unit = own && piece.text.trim() !== "" ? units.get(own) : undefined;
    return [unit ? { ...piece, text: `${piece.text.trim()} ${unit}` } : piece];
  });
  return { ...strip, pieces };
}
