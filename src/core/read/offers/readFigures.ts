import type { Kind, Tolerance } from "../../part.js";
import { times } from "../../quantity/readValue.js";
import { readTolerance } from "../../quantity/tolerance.js";
import type { PrintedTolerance } from "../words/words.js";
import { capacitorFigures } from "./capacitorFigures.js";
import { type DescribedFigures, figuresIn } from "./figures.js";
import { fold } from "./fold.js";
import { inductorFigures, resistorFigures, voltsIn } from "./otherFigures.js";
import { SILENT, type Stated, type StatedHints } from "./stated.js";

/**
 * What a text in plain notation states of a part of this kind; what is not stated is null.
 *
 * @example readFigures("Resistor 1W 5% 4k7", "resistor", hints).value // 4700
 */
export function readFigures(text: string, kind: Kind, hints: StatedHints): Stated {
  const found = figuresIn(text);
  const stated = byKind(found, kind, hints);
  const value = Number.isNaN(stated.value) ? null : (stated.value ?? null);
  const tolerance = toleranceOf(found, value) ?? stated.tolerance ?? toleranceInWords(text, kind);
  return { ...SILENT, ...stated, value, tolerance };
}

function byKind({ figures }: DescribedFigures, kind: Kind, hints: StatedHints): Partial<Stated> {
  if (kind === "capacitor") return capacitorFigures(figures, hints);
  if (kind === "resistor" || kind === "potentiometer" || kind === "thermistor") {
    const stated = resistorFigures(figures, hints);
    return kind === "thermistor" ? { ...stated, volts: [], watts: null } : stated;
  }
  if (kind === "inductor") return inductorFigures(figures);
  return { volts: voltsIn(figures, kind) };
}

/** The first printed tolerance; an absolute one as a ratio of the value. */
function toleranceOf({ tolerances }: DescribedFigures, value: number | null): Tolerance | null {
  const printed = tolerances.find((tolerance) => !tolerance.absolute || (tolerance.unit !== null && value !== null));
  if (!printed) return null;
  const side = (size: number) => (printed.absolute ? ratio(size, printed, value!) : Number(size.toPrecision(12)));
  return { minus: side(printed.minus), plus: side(printed.plus) };
}

const ratio = (size: number, { unit }: PrintedTolerance, value: number) => times(size, unit!.factor) / value;

/** GMV, and the colours of a composition resistor's fourth band. @see RETMA REC-116 */
const IN_WORDS: readonly (readonly [word: string, pattern: RegExp, kind: Kind])[] = [
  ["gmv", /\bgmv\b|guaranteed minimum/, "capacitor"],
  ["no band", /\bno (4th|fourth|tolerance) band|\bno band\b|ohne (4\.|vierten) ring|sans 4e anneau/, "resistor"],
  ["gold", /\bgold\b|\bdore\b|\bor\b(?= band)|goudband/, "resistor"],
  ["silver", /\bsilver\b|\bsilber\b|\bzilver\b|\bargente?\b/, "resistor"],
];

function toleranceInWords(text: string, kind: Kind): Tolerance | null {
  const words = fold(text);
  const said = IN_WORDS.find(([, pattern, of]) => of === kind && pattern.test(words));
  return said ? readTolerance(said[0]) : null;
}
