import type { ListedPart } from "../part.js";
import type { Sign } from "./evidence.js";
import { sharedWords, wordsOf } from "./words.js";

/** What each sign that speaks for a pair says, in the order of its weight; signs against it show as disagreements. */
const SAYS: Readonly<Partial<Record<Sign["name"], string>>> = {
  sameParts: "the same pieces inside",
  sameValue: "the same value",
  onlyOnes: "the only one of its kind in either list",
  onlyOfMake: "the only one of its make in either list",
  sameType: "the same type number",
  words: "",
  samePiece: "a piece of a larger part in both",
  sameVolts: "the same volts",
  sameWatts: "the same watts",
  sameMake: "the same make",
  nearValue: "nearly the same value",
};

/** What speaks for a pair, in words, the weightiest first. @example ["the same value", "both say AVC", "next to the same parts"] */
export function becauseOf(
  factory: ListedPart,
  service: ListedPart,
  signs: readonly Sign[],
  inPlace: number,
  off: number | null,
): readonly string[] {
  const names = signs.filter(({ points }) => points > 0).map(({ name }) => name);
  const shared = sharedWords(wordsOf(factory), wordsOf(service)).map(([word]) => word);
  const said = (Object.keys(SAYS) as Sign["name"][]).flatMap((name) => {
    if (!names.includes(name)) return [];
    return name === "words" ? [`both say ${shared.join(", ")}`] : [SAYS[name]!];
  });
  return [
    ...said,
    ...(inPlace > 0 ? ["in sections that answer to each other"] : []),
    ...(off === 0 ? ["next to the same parts in both lists"] : []),
  ];
}
