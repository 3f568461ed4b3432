import type { Warning } from "../part.js";

/** The six warnings as a cell says them. */
const WORDS: Readonly<Record<Warning["code"], string>> = {
  "ambiguous-m": "what M means",
  "implausible-value": "unlikely value",
  unreadable: "hard to read",
  "duplicate-designator": "designator stands twice",
  conflict: "two statements disagree",
  "unit-assumed": "unit taken for granted",
};

/** A part's warnings as one cell: what is unsure, then why. @example "what M means: 2 M is 2 k or 2 MΩ" */
export function writeWarnings(warnings: readonly Warning[]): string {
  return warnings.map(({ code, text }) => (text ? `${WORDS[code]}: ${text}` : WORDS[code])).join("; ");
}

/** Such a cell read back; an entry in other words is the user's remark and no warning. */
export function readWarnings(cell: string | null): readonly Warning[] {
  return (cell ?? "").split("; ").flatMap((entry) => {
    const code = (Object.keys(WORDS) as Warning["code"][]).find((each) => entry.startsWith(WORDS[each]));
    return code ? [{ code, text: entry.slice(WORDS[code].length).replace(/^: /, "") }] : [];
  });
}
