import { PartsError } from "../../problem.js";

/** The colours of bands and dots; the first ten are the figures 0 to 9, "none" is a band that is not there. */
export const COLOURS = [
  "black",
  "brown",
  "red",
  "orange",
  "yellow",
  "green",
  "blue",
  "violet",
  "grey",
  "white",
  "gold",
  "silver",
  "pink",
  "none",
] as const;
export type Colour = (typeof COLOURS)[number];

/** Other names, the three-letter ones of the trade (common practice), and the two-letter codes of IEC 60757. */
const ALSO: Readonly<Record<string, Colour>> = {
  gray: "grey",
  purple: "violet",
  "-": "none",
  blk: "black",
  brn: "brown",
  org: "orange",
  orn: "orange",
  yel: "yellow",
  grn: "green",
  blu: "blue",
  vio: "violet",
  gry: "grey",
  wht: "white",
  gld: "gold",
  slv: "silver",
  sil: "silver",
  bk: "black",
  bn: "brown",
  rd: "red",
  og: "orange",
  ye: "yellow",
  gn: "green",
  bu: "blue",
  vt: "violet",
  gy: "grey",
  wh: "white",
  gd: "gold",
  sr: "silver",
  pk: "pink",
};

/**
 * The colours that a text names, in order: `yellow violet orange gold`, or with commas, or as `YE VT OG GD`.
 *
 * A dash standing alone, or "none", is a band that is missing.
 *
 * @throws PartsError "unknown-name" for a word that is no colour of the code.
 * @see IEC 60757 for the two-letter codes
 * @example readColours("yellow, violet, orange, gold") // ["yellow", "violet", "orange", "gold"]
 */
export function readColours(text: string): readonly Colour[] {
  const words = text
    .toLowerCase()
    .replace(/no (band|colou?r)/g, "none")
    .split(/[\s,;/]+|(?<=\w)-(?=\w)/)
    .filter((word) => word !== "");
  return words.map((word) => {
    const found = COLOURS.find((colour) => colour === word) ?? ALSO[word];
    if (!found) throw new PartsError("unknown-name", word, `Colours are ${COLOURS.join(", ")}.`);
    return found;
  });
}

/** The figure a colour stands for, null for gold, silver, pink and none. @example figureOf("violet") // 7 */
export function figureOf(colour: Colour): number | null {
  const figure = COLOURS.indexOf(colour);
  return figure < 10 ? figure : null;
}
