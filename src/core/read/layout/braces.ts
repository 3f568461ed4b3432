import { designatorsOf } from "../records/designators.js";
import type { Strip } from "./pieces.js";
import type { Piece } from "./row.js";

const BRACE = /^[)}\]]$/;
const BRACED = /^(.*\d[A-F]?)\s*[)}\]]$/;

/**
 * The strips of a typed list with each row that a drawn brace gathers given what the brace says of all of them:
 * "C1 )", "C2 ) .05 mfd., 400 volt", "C3 )". Strips of other lists come back as they are.
 */
export function withoutBraces(strips: readonly Strip[]): readonly Strip[] {
  const braced = strips.map(namesBeforeBrace);
  if (braced.every((found) => found === null)) return strips;
  return strips.map((strip, at) => {
    const own = braced[at];
    return own ? { ...strip, pieces: [own.names, ...(own.rest.length > 0 ? own.rest : restNear(braced, at))] } : strip;
  });
}

type Braced = { readonly names: Piece; readonly rest: readonly Piece[] };

/** A row of designators, a brace, and what it says; a bracket closed where it was opened is no brace. */
function namesBeforeBrace({ form, pieces }: Strip): Braced | null {
  const [first, second] = pieces;
  if (form !== "gaps" || !first) return null;
  const joined = BRACED.exec(first.text)?.[1];
  if (joined !== undefined && designatorsOf(joined))
    return { names: { ...first, text: joined }, rest: pieces.slice(1) };
  if (!second || !designatorsOf(first.text) || !BRACE.test(second.text[0]!)) return null;
  const text = second.text.slice(1).trim();
  const own = text === "" ? [] : [{ text, start: second.start + second.text.indexOf(text) }];
  return { names: first, rest: [...own, ...pieces.slice(2)] };
}

/** What the nearest row of the same brace says. */
function restNear(braced: readonly (Braced | null)[], at: number): readonly Piece[] {
  for (const step of [1, -1])
    for (let near = at + step; braced[near]; near += step) if (braced[near]!.rest.length > 0) return braced[near]!.rest;
  return [];
}
