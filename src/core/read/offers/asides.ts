/** TABLE: clauses of a description that give no rating of the part itself; folded text. */

import { fold } from "./fold.js";
import { remembering, shapeOf } from "./remember.js";

/**
 * Clauses that are left out before a description is read: uses, what the part replaces, temperatures, bodies in
 * millimetres and inches, lead spacing, resistance of a coil, ratings of a control's switch, surge and test volts.
 */
const ASIDES: readonly RegExp[] = [
  /\b(replaces|ersetzt|remplace|vervangt|equivalent to|in place of|instead of)\b[^,;()]*/g,
  /\b(for|pour|voor|fur)\s+(?!\d|[$€£])[^,;()]*/g,
  /\b(min\.?|minimum|mindest\w*|at least|minstens|au moins|multiples? of|veelvoud van|par multiples? de)( order| qty| de commande)?\s*:?\s*\d+\s*(pcs?|pieces?|packs?|st\.?|stk\.?|stuks?|stuck)?\b(?!\s*(w|v|k|m|ohms?|ω|%|[munpµ]f)(?![a-z]))/g,
  /\b(d\.?c\.?r\.?|dc resistance)\s*[:=]?\s*\d[\d.,]*\s*(ohms?|ω)?/g,
  /\d[\d.,]*\s*k?(ohms?|ω)?\s*\(?(d\.?c\.?r\.?\b|dc resistance)\)?/g,
  /\(?\b\d[\d.,]*\s*k?v\w*\s*(surge|peak|ripple|test|spitze|crete|piek|pruf|insul|isol)\w*\)?/g,
  /\b(surge|peak|test|spitzen?|crete|piek|pruf|insul\w*|isol\w*)[ -]*(voltage|spannung|spanning|tension)?\s*:?\s*\d[\d.,]*\s*k?v\w*/g,
  /\(?\d[\d.,]*\s*m?w\s*(at|@|bei|bij|a)\s*\d+\s*°?\s*c\)?/g,
  /[-+]?\d+\s*(\.\.\.?|to|bis|tot|a|\/)\s*[-+]?\d+\s*(°\s*c?|deg\w*\.?\s*c?)(?!\w)/g,
  /[-+]?\d+\s*(°\s*c?|deg\w*\.?\s*c?|grad|celsius)(?!\w)/g,
  /\d[\d.,]*\s*[xх×]\s*\d[\d.,]*(\s*[x×]\s*\d[\d.,]*)?\s*mm\b/g,
  /\b\d{1,2}(?:[.,]\d)?\s*[x×]\s*\d{2}(?:[.,]\d)?\b(?!\s*(?:[munpµμ]f|mfd|mf\b|v|ω|ohm|k\b))/g,
  /\d\/\d+\s*(?:"|''|in\b|inch)?\s*x\s*\d(?:-\d\/\d+)?\s*(?:"|''|in\b|inch)?(?!\d)/g,
  /(?:\d+[- ])?\d*[./]?\d+\s*("|''|inch(es)?\b|in\.?\b(?=\s*(shaft|long|dia|lead|x)))/g,
  /(ø|\bdia\.?|\brm|\bpitch|\bls|\bp)\s*=?\s*\d[\d.,]*\s*mm?\b/g,
  /\d[\d.,]*\s*(mm|cm)\b/g,
  /\b\d+\s*(h|hrs|hours|stunden|heures|uur)\s*(\/|@|at|bei|bij|a)\s*(?=\d|$)/g,
  /\b(\d+[- ]?)(pin|pole|pos|position|lug|tag|way|gang|turn|tube|valve|rohren|lampes)s?\b/g,
  /\b(g|t|e|ba)-?\d+(\s*\d\/\d)?\b(?=.*(screw|base|bayonet|lamp|$))/g,
];

/** Only for controls: what stands behind the word for a switch is the switch's. */
const SWITCH = /\b(switch|schalter|schakelaar|inter(rupteur)?|[sd]p[sd]t)\b(?=.*\d\s*a\b)[^,;]*/g;

/** A description in which the clauses that do not rate the part are blanks; all else keeps its place. */
export function withoutAsides(description: string, isControl: boolean): string {
  const places = (isControl ? asidesOfControl : asidesOfPart)(shapeOf(description));
  let plain = description;
  for (const [from, to] of places) plain = plain.slice(0, from) + " ".repeat(to - from) + plain.slice(to);
  return plain;
}

type Place = readonly [from: number, to: number];

/** Where the clauses stand; their digits do not matter to that. */
const placesOf =
  (patterns: readonly RegExp[]) =>
  (shape: string): readonly Place[] => {
    const folded = fold(shape);
    return patterns.flatMap((pattern) =>
      [...folded.matchAll(pattern)].map(({ index, 0: clause }): Place => [index, index + clause.length]),
    );
  };

const asidesOfPart = remembering(placesOf(ASIDES));
const asidesOfControl = remembering(placesOf([...ASIDES, SWITCH]));
