import { UNKNOWN_PLACE } from "../circuit/place.js";
import { complete } from "../complete/complete.js";
import { roleOf } from "../complete/roleOf.js";
import { type Kind, type ListedPart, NOTHING_LISTED } from "../part.js";
import { idOfLabel } from "../present/typeNames.js";
import { readValue } from "../quantity/readValue.js";
import { readList } from "../read/readList.js";
import type { Rule, RulesInForce } from "../rule.js";
import { unknownRow } from "../rules/ruleFor.js";
import { splitPart } from "../split/splitPart.js";
import { type Stages, stagesOfPart } from "./stages.js";

/**
 * One part asked about: its line of a list or its value, and what is known besides. A type is an id, a label or an
 * unmistakable piece of one; a use may also be said in the words of a list.
 */
export type PartAsked = {
  readonly listed: string | number;
  readonly type?: string | null;
  readonly usedAs?: string | null;
  readonly volts?: number | null;
  readonly inForce: RulesInForce;
};

/** A bare number below this is farads, any other ohms. */
const FARADS_BELOW = 0.1;
const SAYS_FARADS = /mf|µf|uf|nf|pf|\d\s*[unp]\b/i;

/** A letter that tells no kind, so that the words of a line have to. */
const OF_ANY_KIND = "X";

/** The id of the rule that a text names, by id or label; a piece of a label counts where one label only holds it. */
function namedRule(rules: readonly Rule[], scope: Rule["scope"], text: string): string | null {
  const id = idOfLabel(rules, scope, text);
  if (id !== null) return id;
  const piece = text.trim().toLowerCase();
  const holding = rules.filter((rule) => rule.scope === scope && rule.label.toLowerCase().includes(piece));
  return holding.length === 1 ? holding[0]!.id : null;
}

const isBlank = (text: string | null | undefined): text is null | undefined => (text ?? "").trim() === "";

/** The type that a text names. */
export function typeNamed(text: string | null | undefined, rules: readonly Rule[]): string | null {
  if (isBlank(text)) return null;
  const id = namedRule(rules, "class", text);
  if (id === null) throw unknownRow(rules, "class", text);
  return id;
}

/** The use of a part that a text names, by its rule or in the words of a list. */
function useNamed(text: string | null | undefined, part: ListedPart, rules: readonly Rule[]): string | null {
  if (isBlank(text)) return null;
  const id = namedRule(rules, "role", text) ?? roleOf({ ...part, printed: "", use: text })?.id ?? null;
  if (id === null) throw unknownRow(rules, "role", text);
  return id;
}

/** The parts that a line stands for: one for each designator and section; a bare value is a part of its kind. */
export function partsListed(listed: string | number, kind: Kind | null): readonly ListedPart[] {
  const text = String(listed);
  const read = (line: string) => readList([{ number: 1, text: line, cells: null }]).parts;
  if (typeof listed === "string") {
    const parts = read(text);
    if (parts.length > 0) return parts.flatMap(splitPart).map((part) => ({ ...part, kind: kind ?? part.kind }));
    const isCapacitor = kind === null ? SAYS_FARADS.test(text) : kind === "capacitor";
    const nameless = (letter: string) =>
      read(`${letter}1 ${text}`).map((part) => ({ ...part, printed: text, designators: [] }));
    const [valued] = nameless(isCapacitor ? "C" : "R");
    if (valued?.value) return [{ ...valued, kind: kind ?? valued.kind }];
    const [named] = nameless(OF_ANY_KIND);
    if (named && named.kind !== "other") return [{ ...named, kind: kind ?? named.kind }];
  }
  const { value, kind: told } =
    typeof listed === "number" ? { value: listed, kind: null } : readValue(text, kind ? { kind } : {});
  return [bareValue(text, value, kind ?? told ?? (value < FARADS_BELOW ? "capacitor" : "resistor"))];
}

const bareValue = (printed: string, value: number, kind: Kind): ListedPart => ({
  ...NOTHING_LISTED,
  printed,
  valueText: printed,
  kind,
  value,
  valueState: "stated",
});

/**
 * The main job for one line: what to do and what to fit, one answer for each designator and section the line names.
 *
 * @throws PartsError "unreadable" where the text is neither a line of a list nor a value, "unknown-name" for a type or use
 * that no rule has.
 * @example whatToFit({ listed: "R7 470K 1/2W", inForce: DEFAULTS_IN_FORCE })[0]?.ratings.aim?.text // "470 k"
 */
export function whatToFit({ listed, type, usedAs, volts, inForce }: PartAsked): readonly Stages[] {
  const className = typeNamed(type, inForce.rules);
  const kind = inForce.rules.find((rule) => rule.scope === "class" && rule.id === className)?.kind ?? null;
  const place = { ...UNKNOWN_PLACE, volts: volts ?? null };
  return partsListed(listed, kind).map((part, index) => {
    const said = { className, role: useNamed(usedAs, part, inForce.rules) };
    return stagesOfPart(complete(part, { id: String(index + 1), document: "", inForce, said }), inForce, { place });
  });
}
