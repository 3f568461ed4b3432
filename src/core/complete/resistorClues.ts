/** TABLE: by what a class of resistor, control or network is recognised: words first, then construction, then value and era. */
import type { Clue, Clues } from "./recognised.js";

const R = ["resistor"] as const;

const stated = "the list says so";
const unsaid = "the list does not say what it is made of";

const made = (word: string) => (clues: Clues) => clues.part.construction === word;

/**
 * Resistors and what goes with them. Source: common practice; no material stated in the 1940s to 60s means carbon
 * composition, 3 W and more means wire, since composition ends at 2 W.
 */
export const RESISTOR_CLUES: readonly Clue[] = [
  { id: "thermistor", kinds: ["thermistor"], sure: "sure", why: stated },
  {
    id: "thermistor",
    kinds: R,
    words: /thermistor|\bntc\b|inrush|surge limiter|carbide|varistor|\bvdr\b/,
    when: ({ part }) => part.construction !== "wirewound",
    sure: "sure",
    why: stated,
  },
  { id: "fusible", kinds: R, words: /fusible|fuse resistor|fusing/, sure: "sure", why: stated },
  {
    id: "line_cord_r",
    kinds: ["resistor", "other"],
    words: /line cord|resistance cord|cord.{0,20}resist|curtain burner/,
    when: ({ part, words }) => part.kind === "resistor" || /resist/.test(words),
    sure: "sure",
    why: stated,
  },
  { id: "ballast", kinds: ["resistor", "tube", "other"], words: /ballast/, sure: "sure", why: stated },
  {
    id: "strip_ww",
    kinds: R,
    words: /\bstrip\b|tapped|metal.?clad.*\d\s*-\s*\d/,
    sure: "likely",
    why: "a tapped resistor of several sections",
  },
  {
    id: "metal_clad_ww",
    kinds: R,
    words: /metal.?clad|chassis.?mount|alumin.* (housed|clad)/,
    sure: "likely",
    why: stated,
  },
  {
    id: "hv_divider",
    kinds: R,
    words: /focus|\beht\b|high.?voltage|\bh\.?v\.? (div|string)|probe/,
    sure: "likely",
    why: "its use says high volts",
  },
  { id: "bleeder", kinds: R, words: /bleeder|voltage divider/, sure: "sure", why: "its use says so" },
  {
    id: "cathode_r",
    kinds: R,
    words: /self.?bias|(output|power).{0,12}(cathode|bias)|cathode.{0,12}(output|power)/,
    sure: "likely",
    why: "its use says the cathode of a power stage",
  },
  {
    id: "cathode_r",
    kinds: R,
    words: /cathode/,
    when: ({ part }) => (part.watts ?? 0) >= 1,
    sure: "likely",
    why: "a cathode resistor of 1 W or more",
  },
  {
    id: "wirewound",
    kinds: R,
    words: /wire.?wound|\bw\.?w\.?\b|vitreous|enamel|cement|\bsand\b/,
    sure: "sure",
    why: stated,
  },
  { id: "wirewound", kinds: R, when: made("wirewound"), sure: "sure", why: stated },
  {
    id: "carbon_film_old",
    kinds: R,
    when: (clues) => ["film", "metal-film", "carbon-film", "metal-oxide"].includes(clues.part.construction ?? ""),
    sure: "sure",
    why: stated,
  },
  { id: "carbon_film_old", kinds: R, words: /deposited|precision/, sure: "likely", why: stated },
  { id: "carbon_comp", kinds: R, when: made("composition"), sure: "sure", why: stated },
  {
    id: "carbon_comp",
    kinds: R,
    words: /\bcarbon|\bcomp(osition|\.|\b)|\bc\.?c\.?\b|dog.?bone|insulated/,
    sure: "sure",
    why: stated,
  },
  {
    id: "wirewound",
    kinds: R,
    when: ({ part }) => (part.watts ?? 0) >= 3,
    sure: "likely",
    why: "3 W and more: composition ends at 2 W",
  },
  {
    id: "carbon_film_old",
    kinds: R,
    when: ({ part }) => part.tolerance !== null && part.tolerance.plus <= 0.02,
    sure: "likely",
    why: "2 % and closer is no composition",
  },
  {
    id: "wirewound",
    kinds: R,
    when: ({ part }) => part.value !== null && part.value < 2.2,
    sure: "a guess",
    why: "below 2.2 ohms composition is rare",
  },
  {
    id: "carbon_comp",
    kinds: R,
    when: ({ era }) => era === null || era <= 1965,
    sure: "likely",
    why: `${unsaid}: carbon composition in lists of the 1930s to 60s`,
  },
  { id: "carbon_comp", kinds: R, sure: "a guess", why: unsaid },
  {
    id: "pot_switch",
    kinds: ["potentiometer", "switch"],
    words: /^\s*switch|switch on (the )?control/,
    sure: "likely",
    why: stated,
  },
  { id: "pot", kinds: ["potentiometer"], sure: "sure", why: stated },
  { id: "printed_rc", kinds: ["network"], sure: "sure", why: stated },
];
