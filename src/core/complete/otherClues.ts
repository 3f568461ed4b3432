/** TABLE: by what a rectifier, lamp, tube or other part is recognised. */
import type { Clue } from "./recognised.js";

const stated = "the list says so";

/** Rectifiers, lamps and what else stands in a list. Source: common practice; type numbers of the tube trade. */
export const OTHER_CLUES: readonly Clue[] = [
  { id: "selenium", kinds: ["rectifier"], words: /selenium/, sure: "sure", why: stated },
  { id: "copper_oxide", kinds: ["rectifier"], words: /copper.?oxide/, sure: "sure", why: stated },
  {
    id: "germanium_diode",
    kinds: ["rectifier"],
    words: /germanium|crystal|\b1n(34|48|51|52|54|56|60|63|64|65|69|70|82)a?\b/,
    sure: "sure",
    why: stated,
  },
  { id: "silicon_rectifier", kinds: ["rectifier"], words: /silicon|top.?hat/, sure: "sure", why: stated },
  {
    id: "selenium",
    kinds: ["rectifier"],
    words: /\bma\b|metallic|dry (disc|plate)|plates/,
    when: ({ era }) => era === null || era < 1957,
    sure: "likely",
    why: "a plate rectifier with its milliamperes",
  },
  {
    id: "tube_rectifier",
    kinds: ["tube"],
    words:
      /rectif|\b(80|83v?|84|5[uvwyz][34]\w*|6x[45]\w*|12x4|25z[56]\w*|35[wyz][345]\w*|50[yz][67]\w*|117[znl]\w*|1[bx][23]\w*)\b/,
    sure: "likely",
    why: "a rectifier's type number or use",
  },
  { id: "tube", kinds: ["tube"], sure: "sure", why: stated },
  { id: "neon", kinds: ["lamp"], words: /neon|\bne-?\d/, sure: "sure", why: stated },
  { id: "lamp", kinds: ["lamp"], sure: "sure", why: stated },
  { id: "fuse", kinds: ["fuse"], sure: "sure", why: stated },
  {
    id: "pot_switch",
    kinds: ["switch"],
    words: /on (vol|tone|control|r\d)|power|line|on.?off|s\.?p\.?s\.?t/,
    sure: "likely",
    why: "a line switch",
  },
  { id: "transformer", kinds: ["transformer", "inductor"], sure: "sure", why: stated },
  { id: "vibrator", kinds: ["other", "switch"], words: /vibrator/, sure: "sure", why: stated },
  { id: "transistor", kinds: "any", words: /transistor|\b2n\d{2,4}\b/, sure: "sure", why: stated },
  {
    id: "cord_plug",
    kinds: ["other"],
    words: /line cord|power cord|cord (and|&) plug|attachment plug/,
    sure: "sure",
    why: stated,
  },
];
