import type { Construction, Dielectric, Kind, ListedField, ListedPart, Tolerance } from "../../part.js";
import { times } from "../../quantity/readValue.js";
import type { Words } from "../words/words.js";
import type { Clause } from "./clauses.js";

/** What a note gives to parts of a kind as far as their lines are silent; `only` narrows it to one make, `except` names others. */
export type NoteDefault = {
  readonly kind: Kind;
  readonly only: string | null;
  readonly except: readonly string[];
  readonly section: string | null;
  readonly at: string;
  readonly tolerance: Tolerance | null;
  readonly watts: number | null;
  readonly volts: number | null;
  readonly construction: Construction | null;
  readonly dielectric: Dielectric | null;
};

const GENERAL =
  /\b(?:all|unless|except|otherwise|others (?:are )?(?:marked|noted|shown|stated)|nothing else|not noted|not marked|are|sofern|ohne angabe|wenn nicht|soweit|falls nicht|alle)\b|\bu\.?o\.?s\b/i;
const NO_RULE =
  /\b(?:may|might|send|replace|(?:has|have)(?! (?:an? )?(?:tolerance|rating|limit))|was|were|supplied|can be)\b/i;

/** The defaults that a document's statements give. */
export function defaultsOf(clauses: readonly Clause[]): NoteDefault[] {
  const speaking = clauses.filter((_, i) => isRule(clauses, i)).flatMap(withKinds);
  return speaking.flatMap((clause) => defaultOf(clause) ?? []);
}

/** Words of a statement that holds for all parts and says nothing but figures: "All 1 % 0.25 W unless marked". */
const SAYS_FIGURES =
  /^(?:all|are|is|be|in|to|at|and|of|with|tolerance|tol|rated|rating|power|dissipation|parts?|components?|schedule|list)$/;

/** A statement with the kind it speaks of; one that names none and says nothing but figures, with the kinds that its units tell. */
function withKinds(clause: Clause): readonly Clause[] {
  if (clause.kind !== null) return [clause];
  const { words } = clause;
  const isFigures = words.tokens.every(
    ({ type, key, lexeme }) =>
      type !== "word" || lexeme.unit || lexeme.side || lexeme.join || ELSE.test(key) || SAYS_FIGURES.test(key),
  );
  if (!isFigures) return [];
  const has = (measure: string) => amountIn(words, measure, () => true) !== null;
  const kinds: readonly Kind[] = has("watt") ? ["resistor"] : has("volt") ? ["capacitor"] : ["resistor", "capacitor"];
  return kinds.map((kind) => ({ ...clause, kind }));
}

/** A statement is a rule when it, or the sentence it belongs to, speaks generally. */
function isRule(clauses: readonly Clause[], at: number): boolean {
  const { words, at: note, kind } = clauses[at]!;
  if (NO_RULE.test(words.text)) return false;
  return clauses.some(
    (other) => other.at === note && (other.kind === kind || other.kind === null) && GENERAL.test(other.words.text),
  );
}

function defaultOf({ words, kind, subject, named, section, at }: Clause): NoteDefault | null {
  const exception = words.tokens.findIndex((token) => /^(?:unless|except|sofern)$/.test(token.key));
  const end = exception > subject ? exception : words.tokens.length;
  const behind = (from: number) => from >= subject && from < end;
  const said = {
    tolerance: toleranceIn(words, behind),
    watts: amountIn(words, "watt", behind),
    volts: kind === "capacitor" ? amountIn(words, "volt", behind) : null,
    construction: kind === "resistor" ? (makeIn(words, "construction", behind) as Construction | null) : null,
    dielectric: kind === "capacitor" && named ? dielectricIn(words, behind) : null,
  };
  if (Object.values(said).every((value) => value === null)) return null;
  const before = (from: number) => from < subject;
  const only = makeIn(words, kind === "capacitor" ? "dielectric" : "construction", before);
  return { kind: kind!, only, except: exceptedIn(words, end), section, at, ...said };
}

/** What a kind heading gives to the parts below it: "PRECISION RESISTORS -- 1%, deposited carbon"; "MICA CONDENSERS, 500 VOLTS". */
export function headingDefault(words: Words): NoteDefault | null {
  const kind = words.meanings.find((meaning) => meaning.field === "kind")?.value as Kind | undefined;
  const make = words.meanings.find((meaning) => meaning.field === "dielectric");
  if (!kind && !make) return null;
  const all = () => true;
  return {
    kind: kind ?? "capacitor",
    only: null,
    except: [],
    section: null,
    at: `heading "${words.text}"`,
    tolerance: toleranceIn(words, all),
    watts: amountIn(words, "watt", all),
    volts: amountIn(words, "volt", all),
    construction: kind === "resistor" ? (makeIn(words, "construction", all) as Construction | null) : null,
    dielectric: (make?.value as Dielectric | undefined) ?? null,
  };
}

/** Words behind "except" that say no more than "where something else is printed". */
const ELSE =
  /^(?:unless|except|sofern|where|when|noted|otherwise|stated|marked|shown|specified|indicated|nothing|else|types?|those|units?|following|listed|given|described|values?|ratings?|they|that|this|have|with|nicht|anders|angegeben|vermerkt)$/;

/** "except precision types": the words that name the parts which a note leaves out. */
const exceptedIn = (words: Words, from: number) =>
  words.tokens
    .slice(from)
    .filter((token) => token.type === "word" && token.key.length > 3 && !ELSE.test(token.key))
    .map((token) => token.key);

function toleranceIn(words: Words, within: (from: number) => boolean): Tolerance | null {
  const found = words.tolerances.find((tolerance) => within(tolerance.from) && !tolerance.absolute);
  return found ? { minus: found.minus, plus: found.plus } : null;
}

function amountIn(words: Words, measure: string, within: (from: number) => boolean): number | null {
  const found = words.amounts.find((amount) => within(amount.from) && amount.figures[0]!.unit?.measure === measure);
  return found ? times(found.figures[0]!.number, found.figures[0]!.unit!.factor) : null;
}

/** Film is a make of both; the word stands among the constructions. */
function dielectricIn(words: Words, within: (from: number) => boolean): Dielectric | null {
  const film = makeIn(words, "construction", within) === "film" ? "film" : null;
  return (makeIn(words, "dielectric", within) as Dielectric | null) ?? film;
}

const makeIn = (words: Words, field: string, within: (from: number) => boolean) =>
  words.meanings.find((meaning) => meaning.field === field && within(meaning.from))?.value ?? null;

/** A part with what the notes give it; lines outrank notes, and each field filled says which note it came from. `contradicted` fields stay empty. */
export function withDefaults(
  part: ListedPart,
  defaults: readonly NoteDefault[],
  contradicted: ReadonlySet<ListedField>,
): ListedPart {
  return defaults.reduce(
    (filled, rule) => (applies(filled, rule) ? fillFrom(filled, rule, contradicted) : filled),
    part,
  );
}

function applies(part: ListedPart, rule: NoteDefault): boolean {
  if (part.kind !== rule.kind || (rule.section !== null && rule.section !== part.section)) return false;
  const printed = part.printed.toLowerCase();
  if (rule.except.some((word) => printed.includes(word))) return false;
  const make = part.kind === "capacitor" ? part.dielectric : part.construction;
  if (rule.only !== null) return make === rule.only || (make === "silver-mica" && rule.only === "mica");
  return rule.dielectric === null || part.dielectric === null || part.dielectric === rule.dielectric;
}

function fillFrom(part: ListedPart, rule: NoteDefault, contradicted: ReadonlySet<ListedField>): ListedPart {
  const hasVolts = part.sections?.some((section) => section.volts !== null) ?? false;
  const filled: Partial<Record<ListedField, unknown>> = {};
  for (const field of ["tolerance", "watts", "volts", "construction", "dielectric"] as const)
    if (part[field] === null && rule[field] !== null && !contradicted.has(field) && !(field === "volts" && hasVolts))
      filled[field] = rule[field];
  const from = Object.fromEntries(Object.keys(filled).map((field) => [field, { by: "note" as const, at: rule.at }]));
  return { ...part, ...filled, from: { ...part.from, ...from } } as ListedPart;
}
