import type { ListedPart } from "../part.js";
import { CAPACITOR_CLUES } from "./capacitorClues.js";
import { OTHER_CLUES } from "./otherClues.js";
import { firstClue, type Recognised, wordsOf } from "./recognised.js";
import { RESISTOR_CLUES } from "./resistorClues.js";

const CLUES = [...RESISTOR_CLUES, ...CAPACITOR_CLUES, ...OTHER_CLUES];

const NOT_RECOGNISED: Recognised = { id: "unknown", sure: "sure", why: "nothing in the list says what it is" };

/**
 * The class of a part (an id of a rule row), how sure that is, and what told it; `unknown` where nothing does.
 *
 * Words of the list come first, then material and construction as read, then value and era.
 *
 * @param era The year the equipment was made, or null.
 * @example classOf(listed, 1948) // { id: "paper_wax", sure: "likely", why: "... 0.001 to 1 µF is paper up to about 1960" }
 */
export function classOf(part: ListedPart, era: number | null): Recognised {
  return firstClue(CLUES, { part, words: wordsOf(part), era }) ?? NOT_RECOGNISED;
}
