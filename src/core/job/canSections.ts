import type { CanSection } from "../part.js";
import { PartsError } from "../problem.js";
import { readList } from "../read/readList.js";

/** Figures without a unit, such as 20-20, then perhaps a stroke or an @, and volts: of all sections, or one for each. */
const BARE =
  /^(\d[\d.]*(?:\s*[-+x]\s*[\d.]+)+)\s*(?:[/@,]?\s*(\d+(?:\s*[-+/]\s*\d+)*)\s*(?:v\.?|volts?|w\.?v\.?(?:dc)?)?)?$/i;

/**
 * The sections of a can, from the way lists print them: `20-20/150`, `40-40-20 mfd, 450-450-25 V`, `A 40 mf 450 V, B 20 mf 25 V`.
 *
 * Figures without a unit are microfarads, as on every can. A text with one capacitance is a can with one section.
 *
 * @returns Farads and volts; the letter where one is printed.
 * @throws PartsError "unreadable" when no capacitance can be made out.
 * @example canSections("20-20/150") // [{ suffix: null, farads: 2e-5, volts: 150 }, { suffix: null, farads: 2e-5, volts: 150 }]
 */
export function canSections(text: string): readonly CanSection[] {
  const bare = BARE.exec(text.trim());
  const written = bare ? `${bare[1]} mfd${bare[2] ? `, ${bare[2]} V` : ""}` : text;
  const [part] = readList([{ number: 1, text: `C1  ${written}`, cells: null }]).parts;
  if (part?.sections) return part.sections;
  if (part?.kind === "capacitor" && part.value !== null) {
    return [{ suffix: null, farads: part.value, volts: part.volts }];
  }
  throw new PartsError("unreadable", text, "Write it like 20-20/150, or 40-40-20 mfd, 450-450-25 V.");
}
