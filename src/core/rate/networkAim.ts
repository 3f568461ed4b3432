import type { InnerPart, Part } from "../part.js";
import type { Aim, Piece } from "../ratings.js";
import type { RuleFor } from "../rules/ruleFor.js";
import { findAim } from "./findAim.js";
import { type Need, needOf } from "./need.js";

/** From this value up a network's capacitor becomes film, below it mica or ceramic. Common practice. */
const FILM_FROM_FARADS = 1e-9;

/** The pieces a printed network is replaced by, in the order of the list, and what could not be found. */
export type NetworkAim = { readonly aim: Aim | null; readonly because: readonly string[] };

/** One piece inside a network as a part of its own, with the network's tolerance, watts and volts. */
function pieceNeed(inner: InnerPart, need: Need): Need {
  const part: Part = {
    ...need.part,
    kind: inner.kind,
    inner: null,
    value: inner.value === null ? null : { value: inner.value, from: "line", at: "inside the network" },
  };
  const isFilm = inner.kind === "capacitor" && (inner.value ?? 0) >= FILM_FROM_FARADS;
  const technologies = isFilm ? [...need.rule.technologies].reverse() : need.rule.technologies;
  const rule: RuleFor = { ...need.rule, technologies };
  return needOf(part, rule, need.place, need.settings, need.stock);
}

/**
 * A printed network as discrete parts: a piece for each element, with its own ratings; the pin map is the user's to copy.
 *
 * @example networkAim(need).aim?.text // "249 k; 499 k; 0.0047 µF; 240 pF"
 */
export function networkAim(need: Need): NetworkAim {
  const inner = need.part.inner ?? [];
  const found = inner.map((each) => ({ each, aim: findAim(pieceNeed(each, need)).aim }));
  const pieces: readonly Piece[] = found.flatMap(({ each, aim }) =>
    (aim?.pieces ?? []).map((piece) => ({ ...piece, kind: each.kind })),
  );
  const missing = found.filter(({ aim }) => aim === null).length;
  const because = ["a strip of discrete parts: copy the pin map before the network comes out"];
  if (missing > 0) because.push(`${missing} of its pieces have no value that is usually made`);
  const text = found.flatMap(({ aim }) => aim?.text ?? []).join("; ");
  return { aim: pieces.length > 0 ? { pieces, text } : null, because };
}
