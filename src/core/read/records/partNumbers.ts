/** A part number as a table is looked up by: without blanks, in capitals. @example plainNumber("1006750 -39a") // "1006750-39A" */
export const plainNumber = (text: string): string => text.replace(/\s+/g, "").toUpperCase();

/** A part number with the base of the last full number above put before a dash number: "-39" is "1006750-39". */
export function fullPartNumber(text: string, base: string | null): string {
  if (/^-\d/.test(text) && base !== null) return base + text;
  return text;
}

/** What a full part number shares with its family: all before the last dash. */
export function baseOf(text: string): string | null {
  const match = /^(.*\w)-\w*$/.exec(text);
  return match ? match[1]! : /^\d{4,}$/.test(text) ? text : null;
}
