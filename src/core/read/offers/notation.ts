import type { DecimalMark } from "../../quantity/notation/number.js";

const REAL_DENOMINATORS = new Set([2, 3, 4, 8, 16, 32, 64]);

/**
 * A description in the one notation that the words of parts lists know.
 *
 * Catalogues write V= and V~, PIV, 5 ~ 35 pF, R47, 10 000 Ω, and 10/25 for 10 µF at 25 V, which is no fraction.
 *
 * @example plainNotation("Cond. 0,22 µF 275 V~", "comma") // "Cond. 0.22 µF 275 VAC"
 */
export function plainNotation(text: string, mark: DecimalMark): string {
  return pointed(text, mark)
    .replace(/(\d\s?k?)V\s?(?:=|⎓|DC\b|d\.c\.|cc\b|gs\b)/gi, "$1VDC")
    .replace(/(\d\s?k?)V\s?(?:~|∼|≈|AC\b|a\.c\.|ca\b|ws\b|eff\b)/gi, "$1VAC")
    .replace(/(\d\s?k?)(?:P\.?I\.?V\.?|P\.?R\.?V\.?|VRRM|VR)\b/gi, "$1V")
    .replace(/(\d\s?[munpµμ]?[Ff]?)\s?[~∼]\s?(?=\d)/g, "$1 to ")
    .replace(
      /(?<![\d.,/-])(\d+)\/(\d+)(?![\d/.,]|-\d)/g,
      (whole, over: string, under: string, at: number, all: string) =>
        isFraction(Number(over), Number(under), all.slice(at + whole.length)) ? whole : `${over} / ${under}`,
    )
    .replace(/(?<![\w.-])R(\d{1,3})(?=\s|$|,|;|\/)/g, "0R$1")
    .replace(/(\d\s?)[x×](?=\s?\d)/gi, "$1 x ")
    .replace(/[‐‑−]/g, "-");
}

/** Decimal commas become points, and groups of three digits set apart with blanks are closed up. */
function pointed(text: string, mark: DecimalMark): string {
  const closed = text.replace(
    /(?<![\w.,/+-]|\d )(\d{1,3}) (\d{3})(?=\s?(?:[kM]?Ω|ohms?\b|[pnµμu]F\b|V\b|h\b))/gi,
    "$1$2",
  );
  if (mark === "point") return closed;
  const whole = closed.replace(/(?<![\d.,])([1-9]\d{0,2})\.(?=\d{3}(?![\d.]))/g, "$1");
  return whole.replace(/(\d),(?=\d)/g, "$1.").replace(/(?<![\d\w]),(?=\d)/g, ".");
}

/** 1/2 and 3/8 are fractions wherever they stand, tenths only of a watt; 25/25 and 16/50 are two figures. */
function isFraction(over: number, under: number, behind: string): boolean {
  const ofWatt = /^\s?w/i.test(behind);
  if (over >= under || common(over, under) > 1) return false;
  return REAL_DENOMINATORS.has(under) || (ofWatt && [5, 6, 10, 20].includes(under));
}

function common(a: number, b: number): number {
  return b === 0 ? a : common(b, a % b);
}
