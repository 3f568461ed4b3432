/** TABLE: by what a class of capacitor is recognised: words first, then dielectric, then value and era. */
import type { Clue, Clues } from "./recognised.js";

const C = ["capacitor"] as const;

const stated = "the list says so";
const unsaid = "the list does not say what it is made of";

const of =
  (...words: string[]) =>
  (clues: Clues) =>
    words.includes(clues.part.dielectric ?? "");
const bare = (clues: Clues) => clues.part.dielectric === null;
const size = (clues: Clues) => clues.part.value ?? clues.part.valueMax ?? clues.part.sections?.[0]?.farads ?? null;
const between = (low: number, high: number) => (clues: Clues) => {
  const farads = size(clues);
  return bare(clues) && farads !== null && farads >= low && farads < high;
};
const atLeastVolts = (clues: Clues, volts: number) => (clues.part.volts ?? 0) >= volts;
const wetOrDry = (clues: Clues) => of("electrolytic")(clues) || between(1e-6, 1)(clues);
const lowVolts = (clues: Clues) => clues.part.volts !== null && clues.part.volts <= 50;

/**
 * Capacitors. Source: common practice where a material is stated; where none is, a rule of thumb by value seen on two
 * restorers' sites: below 0.001 µF mica or ceramic, up to 1 µF paper, above it electrolytic.
 */
export const CAPACITOR_CLUES: readonly Clue[] = [
  { id: "trimmer", kinds: C, words: /trimmer|padder|compression/, sure: "sure", why: stated },
  { id: "air_variable", kinds: C, words: /\bgang|tuning|variable/, sure: "sure", why: stated },
  { id: "air_variable", kinds: C, when: of("air"), sure: "likely", why: stated },
  {
    id: "trimmer",
    kinds: C,
    when: ({ part }) => part.valueState === "range" && (part.valueMax ?? 1) < 1e-8,
    sure: "likely",
    why: "a range of picofarads",
  },
  { id: "paper_block", kinds: C, words: /\bblock|potted|\bpack\b|\btar\b/, sure: "sure", why: stated },
  {
    id: "paper_bathtub",
    kinds: C,
    words: /bath.?tub|metal.?case|\bcan\b.*paper|paper.*\bcan\b/,
    sure: "sure",
    why: stated,
  },
  { id: "oil", kinds: C, when: of("oil"), sure: "sure", why: stated },
  {
    id: "paper_moulded",
    kinds: C,
    words: /moulded|molded|banded/,
    when: (c) => of("paper")(c) || between(1e-9, 1e-6)(c),
    sure: "sure",
    why: stated,
  },
  {
    id: "paper_wax",
    kinds: C,
    words: /\bwax|tubular/,
    when: (c) => of("paper")(c) || between(1e-9, 1e-6)(c),
    sure: "sure",
    why: stated,
  },
  {
    id: "paper_bathtub",
    kinds: C,
    when: (c) => of("paper")(c) && c.part.sections !== null,
    sure: "likely",
    why: "several papers in one case",
  },
  { id: "paper_wax", kinds: C, when: of("paper"), sure: "likely", why: "paper of a shell that the list does not say" },
  { id: "mica_silver", kinds: C, when: of("silver-mica"), sure: "sure", why: stated },
  { id: "mica_foil", kinds: C, when: of("mica"), sure: "sure", why: stated },
  { id: "ceramic_feedthrough", kinds: C, words: /feed.?thr|stand.?off/, sure: "sure", why: stated },
  { id: "ceramic_hv", kinds: C, words: /door.?knob/, sure: "sure", why: stated },
  {
    id: "ceramic_hv",
    kinds: C,
    when: (c) => of("ceramic")(c) && atLeastVolts(c, 3000),
    sure: "likely",
    why: "a ceramic for kilovolts",
  },
  {
    id: "ceramic_tc",
    kinds: C,
    when: ({ part }) => /^([NP]\d{2,4}|NP[0O]|C0G|COG)/i.test(part.temperatureCoefficient ?? ""),
    sure: "sure",
    why: "its temperature coefficient is stated",
  },
  { id: "ceramic_disc", kinds: C, when: of("ceramic"), sure: "likely", why: stated },
  {
    id: "film_old",
    kinds: C,
    when: of("film", "polyester", "polypropylene", "polystyrene"),
    sure: "sure",
    why: stated,
  },
  { id: "tantalum", kinds: C, when: of("tantalum"), sure: "sure", why: stated },
  {
    id: "elec_nonpolar",
    kinds: C,
    words: /non.?polar|bi.?polar|crossover|\bn\.?p\.?\b/,
    when: wetOrDry,
    sure: "sure",
    why: stated,
  },
  {
    id: "elec_can_insulated",
    kinds: C,
    words: /insulated.{0,8}can|fib(re|er) washer|can.{0,12}insulated/,
    when: wetOrDry,
    sure: "sure",
    why: stated,
  },
  {
    id: "elec_multi",
    kinds: C,
    when: (c) => wetOrDry(c) && (c.part.sections?.length ?? 0) > 1,
    sure: "sure",
    why: "several sections in one can",
  },
  {
    id: "elec_bias",
    kinds: C,
    words: /cathode|bias/,
    when: (c) => wetOrDry(c) && (lowVolts(c) || c.part.volts === null),
    sure: "likely",
    why: "its use and volts",
  },
  {
    id: "elec_bias",
    kinds: C,
    when: (c) => of("electrolytic")(c) && lowVolts(c),
    sure: "likely",
    why: "50 V and less: bias and bypass",
  },
  { id: "elec_single", kinds: C, when: of("electrolytic"), sure: "sure", why: stated },
  {
    id: "oil",
    kinds: C,
    when: (c) => between(5e-7, 1)(c) && atLeastVolts(c, 600),
    sure: "a guess",
    why: `${unsaid}: microfarads at 600 V and more`,
  },
  {
    id: "elec_bias",
    kinds: C,
    when: (c) => between(1e-6, 1)(c) && lowVolts(c),
    sure: "likely",
    why: `${unsaid}: above 1 µF at few volts`,
  },
  {
    id: "elec_single",
    kinds: C,
    when: between(1.000001e-6, 1),
    sure: "likely",
    why: `${unsaid}: above 1 µF an electrolytic`,
  },
  {
    id: "ceramic_hv",
    kinds: C,
    when: (c) => between(0, 1e-8)(c) && atLeastVolts(c, 5000),
    sure: "a guess",
    why: `${unsaid}: picofarads at kilovolts`,
  },
  {
    id: "mica_foil",
    kinds: C,
    when: (c) => between(0, 1e-9)(c) && c.era !== null && c.era < 1948,
    sure: "likely",
    why: `${unsaid}: below 0.001 µF mica before 1948`,
  },
  {
    id: "mica_foil",
    kinds: C,
    when: between(0, 1e-9),
    sure: "a guess",
    why: `${unsaid}: below 0.001 µF mica or ceramic`,
  },
  {
    id: "paper_wax",
    kinds: C,
    when: (c) => between(1e-9, 1.000001e-6)(c) && (c.era === null || c.era <= 1960),
    sure: "likely",
    why: `${unsaid}: 0.001 to 1 µF is paper up to about 1960`,
  },
  {
    id: "film_old",
    kinds: C,
    when: between(1e-9, 1.000001e-6),
    sure: "a guess",
    why: `${unsaid}: 0.001 to 1 µF after 1960`,
  },
];
