/** Excel's longest name of a sheet. @source Microsoft, "Rename a worksheet" */
const LONGEST = 31;

/** What no sheet's name may hold. @source Microsoft, "Rename a worksheet" */
const FORBIDDEN = /[:\\/?*[\]\p{Cc}]/gu;

/**
 * Names that a workbook takes for its sheets, as near to those wanted as may be: at most 31 characters, none of `: \ / ? * [ ]`,
 * no apostrophe at either end, no two alike in whatever case, none of those taken.
 *
 * @param taken Names that other sheets of the workbook have.
 * @example sheetNames(["Order A/B", "order a-b"]) // ["Order A-B", "order a-b 2"]
 */
export function sheetNames(wanted: readonly string[], taken: readonly string[] = []): readonly string[] {
  const used = new Set(["history", ...taken.map((name) => name.toLowerCase())]);
  return wanted.map((name) => {
    const plain = trimmed(name.replace(FORBIDDEN, "-"));
    let found = plain;
    for (let nth = 2; used.has(found.toLowerCase()); nth++) {
      const mark = ` ${nth}`;
      found = trimmed(plain, LONGEST - mark.length) + mark;
    }
    used.add(found.toLowerCase());
    return found;
  });
}

/** A name cut to its length, without blanks and apostrophes at its ends; never empty, no character cut in two. */
function trimmed(name: string, most = LONGEST): string {
  let cut = "";
  for (const character of name.trim().replace(/^'+/, ""))
    if (cut.length + character.length <= most) cut += character;
    else break;
  return cut.replace(/['\s]+$/, "") || "Sheet";
}
