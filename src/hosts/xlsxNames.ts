/** Applies a change to the parts of a formula that are not inside a text. */
export function outsideTexts(formula: string, change: (code: string) => string): string {
  return formula
    .split(/("(?:[^"]|"")*")/)
    .map((piece, i) => (i % 2 === 0 ? change(piece) : piece))
    .join("");
}

const OURS = /\bLUG\.([A-Z0-9_]+)\(/gi;
const IN_FILES = /\b_xldudf_LUG_([A-Z0-9_]+)\(/gi;

/** A formula as Excel keeps it in files: `LUG.DERATE(` stands there as `_xldudf_LUG_DERATE(`. */
export function toFileNames(formula: string): string {
  return outsideTexts(formula, (code) => code.replace(OURS, (_, name: string) => `_xldudf_LUG_${name.toUpperCase()}(`));
}

/** A formula as the user writes it. @example fromFileNames("_xldudf_LUG_DERATE(A1)") // "LUG.DERATE(A1)" */
export function fromFileNames(formula: string): string {
  return outsideTexts(formula, (code) => code.replace(IN_FILES, "LUG.$1("));
}

/**
 * Does a formula mean the same when it is stored as a plain one, which Excel answers with a single value? A range is
 * safe where one of our functions takes it whole; anywhere else Excel might pick one cell of it.
 */
export function isPlain(formula: string): boolean {
  let hasRange = false;
  outsideTexts(formula, (code) => {
    hasRange ||= code.includes(":");
    return code;
  });
  return !hasRange || /^LUG\.[A-Z0-9_]+\([^()]*\)$/i.test(formula);
}
