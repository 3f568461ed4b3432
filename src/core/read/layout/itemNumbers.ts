import { designatorsAt } from "../records/designators.js";
import type { Strip } from "./pieces.js";

const COUNTED = /^\(?(\d{1,3})[.)]?(?=\s|$)\s*/;
const FEWEST = 3;

/**
 * The strips of a typed list without the numbers that count its lines (1, 2, 3 ... in front of "R1  47K"), which say
 * nothing of the parts. Strips of other lists come back as they are.
 */
export function withoutItemNumbers(printed: readonly Strip[]): readonly Strip[] {
  const strips = printed.map(withoutNumbersInside);
  const counted = countedStrips(strips);
  return counted.size === 0 ? strips : strips.map((strip) => (counted.has(strip) ? withoutNumber(strip) : strip));
}

const APART = /^\d{1,3}[.)]$/;

/** "1)  R1 = 1M    2)  R2 = 47K": numbers with a mark of their own before each of several parts. */
function withoutNumbersInside(strip: Strip): Strip {
  if (strip.form !== "gaps" || !strip.pieces.some((piece) => APART.test(piece.text))) return strip;
  const pieces = strip.pieces.filter(({ text }, i) => {
    const next = strip.pieces[i + 1];
    return !APART.test(text) || !next || designatorsAt(next.text) === null;
  });
  return { ...strip, pieces };
}

/** The strips that begin with running numbers, where designators stand behind most of them. */
function countedStrips(strips: readonly Strip[]): Set<Strip> {
  const run: Strip[] = [];
  let named = 0;
  for (const strip of strips) {
    if (strip.form !== "gaps" || numberOf(strip) !== run.length + 1) continue;
    run.push(strip);
    const first = withoutNumber(strip).pieces[0];
    if (first && designatorsAt(first.text)) named++;
  }
  return new Set(run.length >= FEWEST && named * 2 > run.length ? run : []);
}

const numberOf = ({ pieces }: Strip) => Number(COUNTED.exec(pieces[0]?.text ?? "")?.[1]);

function withoutNumber(strip: Strip): Strip {
  const [first, ...more] = strip.pieces;
  const number = COUNTED.exec(first!.text)![0];
  const rest = { text: first!.text.slice(number.length), start: first!.start + number.length };
  return { ...strip, pieces: rest.text === "" ? more : [rest, ...more] };
}
