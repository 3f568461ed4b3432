import type { Token } from "./token.js";

const COEFFICIENT = /^(?:NP[0O]|C0[GHJ]|COG|N\d{3,4}|P\d{3}|X[57][RSUVP]|Y5[PTUVEF]|Z5[PTUVEF])$/i;

/** Words that are a temperature code, or its letters when a number follows: NPO, N 150, NP 0. */
export const COEFFICIENT_WORDS: ReadonlySet<string> = new Set(["npo", "cog", "n", "p", "np"]);

/** A temperature code: N750, NPO, C0G, X7R; or N 150, NP 0 written apart. In "100n 400V" the n is a unit. */
export function coefficientOf(tokens: readonly Token[]): string | null {
  for (let at = 0; at < tokens.length; at++) {
    const { type, lexeme } = tokens[at]!;
    const code = type === "code" || lexeme.isCoefficient ? codeAt(tokens, at) : null;
    if (code !== null) return code;
  }
  return null;
}

function codeAt(tokens: readonly Token[], at: number): string | null {
  const { text, type } = tokens[at]!;
  if (COEFFICIENT.test(text)) return text.toUpperCase();
  const next = tokens[at + 1];
  const isUnit = at > 0 && tokens[at - 1]!.type === "number";
  const apart = type === "word" && next?.type === "number" && !isUnit ? text + next.text : "";
  return COEFFICIENT.test(apart) ? apart.toUpperCase() : null;
}
