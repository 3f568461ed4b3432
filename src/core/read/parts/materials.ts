import type { Construction, Dielectric, Kind } from "../../part.js";
import type { Words } from "../words/words.js";
import { ofRoles, type Text } from "./texts.js";

/** Whether a meaning's word was read as the unit of a number (mf in "4.7 mf" is no metal film). */
const isUnit = (words: Words, from: number) => words.amounts.some((amount) => amount.from < from && from < amount.to);

/** "if you have it": a wish, no statement. */
const WISH = /\b(?:if you|if available|or better|may be)\b/i;

/** The first word of a field that a part's texts state. */
function firstOf(texts: readonly Text[], field: "construction" | "dielectric" | "taper"): string | null {
  for (const { role, words } of ofRoles(texts, "value", "description", "rating", "remarks")) {
    if (role === "remarks" && WISH.test(words.text)) continue;
    const meaning = words.meanings.find(
      (candidate) => candidate.field === field && !isUnit(words, candidate.from) && !isForeign(words, candidate.from),
    );
    if (meaning) return meaning.value;
  }
  return null;
}

/** Words behind "wound on", "with", "for" speak of another thing; brackets hold asides. */
function isForeign(words: Words, at: number): boolean {
  return words.meanings.some(
    (meaning) =>
      meaning.field === "aside" &&
      meaning.value === "next" &&
      meaning.to <= at &&
      words.tokens[meaning.from]!.key === "wound",
  );
}

/** How a resistor is said to be built. */
export function statedConstruction(texts: readonly Text[], kind: Kind): Construction | null {
  if (kind !== "resistor" && kind !== "potentiometer" && kind !== "network") return null;
  const said = firstOf(texts, "construction") as Construction | null;
  const inUse = ofRoles(texts, "use")
    .flatMap(({ words }) => words.meanings)
    .find((meaning) => meaning.value === "wirewound");
  return said ?? (inUse ? "wirewound" : null);
}

/** What a capacitor is said to be made of; temperature codes of ceramics count as said. */
export function statedDielectric(texts: readonly Text[], kind: Kind): Dielectric | null {
  if (kind !== "capacitor") return null;
  const said = firstOf(texts, "dielectric") as Dielectric | null;
  if (said) return said;
  const film = firstOf(texts, "construction");
  if (film === "film" || film === "metal-film") return "film";
  return texts.some(({ words }) => words.coefficient !== null) ? "ceramic" : null;
}

/** The taper of a control. */
export const statedTaper = (texts: readonly Text[], kind: Kind) =>
  kind === "potentiometer" ? firstOf(texts, "taper") : null;
