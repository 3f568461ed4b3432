import type { ListedPart } from "../part.js";
import { firstClue, type Recognised, wordsOf } from "./recognised.js";
import { ROLE_CLUES } from "./roleClues.js";

/**
 * The use of a part (an id of a rule row), how sure that is and what told it; null where the list says nothing of it.
 *
 * @example roleOf({ ...listed, use: "plate load" }) // { id: "plate_load", sure: "likely", why: "the list says so" }
 */
export function roleOf(part: ListedPart): Recognised | null {
  return firstClue(ROLE_CLUES, { part, words: wordsOf(part), era: null });
}
