import type { Kind } from "../../part.js";
import { attempt } from "../../problem.js";
import type { DecimalMark } from "../../quantity/notation/number.js";
import { readValue } from "../../quantity/readValue.js";
import { fold } from "./fold.js";
import { plainNotation } from "./notation.js";
import { remembering, shapeOf } from "./remember.js";

const NEW_OLD_STOCK =
  /\bn\.?o\.?s\b|new[- ]old[- ]stock|(ancien|vieux) stock neuf|stock ancien,? neuf|neuf de stock|oude voorraad(,? ongebruikt)|ongebruikt|nieuw(,)? oude? voorraad|alte lagerware|altbestand|ungebraucht|unused old/;

/** Whether a text says new old stock: unused, but old. @example isNewOldStock("5.6K 1W n.o.s.") // true */
export const isNewOldStock = (text: string): boolean => oldStock(shapeOf(text)).is;

const oldStock = remembering((shape) => ({ is: NEW_OLD_STOCK.test(fold(shape)) }));

const READING =
  /\b(?:tested|tests?|reads?|measured?|measures|meter|mesuree?s?|gemeten|gemessen|meet|misst|drifted to|now)\s*(?:at|as|says|about|ca\.?|abt\.?|=|:)?\s*(\d*[.,]?\d+(?:[a-zµμω]\d+)?\s*[a-zµμΩω%]*)(.*)$/i;

/**
 * What a remark says was read on the part, in base units; null where it says none or two limits. It is never the value.
 *
 * @example measuredIn("two read 51k", "resistor", "point") // 51000
 */
export function measuredIn(remark: string, kind: Kind, mark: DecimalMark): number | null {
  const found = READING.exec(plainNotation(remark, mark));
  if (!found || /^\s*(?:-|–|to|\/|and|bis|tot)\s*\d/.test(found[2]!)) return null;
  const text = /^[\d.]+ [a-z]{3,}$/i.test(found[1]!) ? found[1]! : found[1]!.replace(/\s*(%|v|ma|a)$/i, "!");
  const read = attempt(() => readValue(text.trim(), { kind }));
  return !read || read.unit === null || (kind === "capacitor" && /^[\d.]+$/.test(text.trim())) ? null : read.value;
}

/** The taper that a text prints, or null: audio and log mean the same, and stand as printed. */
export function taperIn(text: string): string | null {
  const words = fold(text);
  if (/\b(anti-?log|rev(erse)?\.? (log|audio)|neg\w*\.? log|log\w* inv\w*|c[- ]taper)\b/.test(words)) return "reverse";
  if (/\baudio\b|\ba[- ]taper\b/.test(words)) return "audio";
  if (/\blog(arith\w*|\.)?(?!\w)|pos\. ?log/.test(words)) return "log";
  return /\blin(ear|eair|eaire|eaar)?\b|\bb[- ]taper\b/.test(words) ? "linear" : null;
}

/** Whether a control is sold with its switch. @example hasSwitch("500K audio w/switch") // true */
export function hasSwitch(text: string): boolean {
  const words = fold(text);
  if (/\b(no|without|less|sans|zonder|ohne|w\/o)\s*(an? )?(switch|inter|schakelaar|schalter)/.test(words)) return false;
  return /switch|\binter\b|interrupteur|schakelaar|schalter|\b[sd]pst\b/.test(words);
}

/** Body size in metres, or null where it is not stated. */
export type BodySize = { readonly lengthMetres: number | null; readonly diameterMetres: number | null };

/** The size a text prints in millimetres: the longer figure of "11 x 5 mm" is the length. @example sizeIn("Ø8 x 20 mm") */
export function sizeIn(text: string, mark: DecimalMark): BodySize {
  if (!/mm/i.test(text)) return { lengthMetres: null, diameterMetres: null };
  const found = /(\d+(?:\.\d+)?)\s*(?:mm)?\s*[x×]\s*(?:ø|d|l)?\s*(\d+(?:\.\d+)?)\s*mm/i.exec(plainNotation(text, mark));
  if (!found) return { lengthMetres: null, diameterMetres: null };
  const metres = [Number(found[1]), Number(found[2])]
    .sort((a, b) => a - b)
    .map((mm) => Number((mm / 1000).toPrecision(6)));
  return { lengthMetres: metres[1]!, diameterMetres: metres[0]! };
}
