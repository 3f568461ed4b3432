import type { ListedPart, Warning } from "../part.js";

/** A word of a scanned line that the character reader was unsure of. */
export type Doubt = { readonly line: number; readonly word: string };

/**
 * Parts with a warning for each word of theirs that could not be made out for sure in the picture.
 *
 * A word warns the parts of its line that print it, or all parts of the line where none does: nothing is wrong in silence.
 *
 * @example withDoubts([{ ...part, lines: [4], printed: "33K TW" }], [{ line: 4, word: "TW" }])[0].warnings[0].code // "unreadable"
 */
export function withDoubts(parts: readonly ListedPart[], doubts: readonly Doubt[]): readonly ListedPart[] {
  if (doubts.length === 0) return parts;
  const warnings = parts.map((): Warning[] => []);
  for (const { line, word } of doubts) {
    const here = [...parts.keys()].filter((at) => parts[at]!.lines.includes(line));
    const printing = here.filter((at) => parts[at]!.printed.includes(word));
    for (const at of printing.length > 0 ? printing : here)
      warnings[at]!.push({ code: "unreadable", text: `"${word}" in the picture` });
  }
  return parts.map((part, at) =>
    warnings[at]!.length > 0 ? { ...part, warnings: [...part.warnings, ...warnings[at]!] } : part,
  );
}
