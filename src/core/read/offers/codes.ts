import type { Kind } from "../../part.js";
import { decodeCode } from "../words/codes.js";
import { coloursOf } from "../words/colours.js";
import { tokensOf } from "../words/tokens.js";
import { SILENT, type Stated } from "./stated.js";

/** What a type designation or colour bands state. */
export type StatedCode = { readonly kind: Kind; readonly technology: readonly string[]; readonly stated: Stated };

/** A type designation of the military specifications or colour bands in a description, or null. */
export function codeIn(text: string): StatedCode | null {
  const tokens = tokensOf(text);
  for (const token of tokens) {
    const code = token.type === "code" ? decodeCode(token.text) : null;
    if (!code) continue;
    const technology = [code.construction, code.dielectric].filter((word) => word !== null);
    const { value, tolerance, watts } = code;
    return { kind: code.kind, technology, stated: { ...SILENT, value, tolerance, watts } };
  }
  const colours = coloursOf(tokens);
  if (!colours) return null;
  const tolerance = colours.tolerance === null ? null : { minus: colours.tolerance, plus: colours.tolerance };
  return { kind: "resistor", technology: [], stated: { ...SILENT, value: colours.ohms, tolerance } };
}

const NOT_FIGURES: readonly RegExp[] = [
  /(?<!\w)[XY][12](?:\s*[/,&+-]?\s*[XY][12])?(?!\w)/gi,
  /(?<!\w)(?:NP[0O]|C[0O]G|[NP]\d{2,4}|[XYZ][4-9][A-HJ-NP-V])(?!\w)/g,
  /(?<![\w.])E(?:3|6|12|24|48|96|192)(?!\w)/g,
];

/** A text without safety classes, temperature codes and names of preferred series, whose digits rate nothing. */
export function withoutCodes(text: string): string {
  return NOT_FIGURES.reduce((plain, code) => plain.replace(code, (found) => " ".repeat(found.length)), text);
}
