import { type Fact, fact } from "../fact.js";
import type { ListedAs, ListedField, ListedPart, Part, Tolerance } from "../part.js";
import type { Rule, RulesInForce } from "../rule.js";
import { ELECTROLYTIC_TOLERANCES } from "../rules/electrolyticTables.js";
import { classOf } from "./classOf.js";
import { pieceClass } from "./pieceClass.js";
import type { Recognised } from "./recognised.js";
import { roleOf } from "./roleOf.js";

/** What the user says of a part; what is left out the list and the rules say. */
export type Said = {
  readonly className?: string | null;
  readonly role?: string | null;
  readonly value?: number | null;
  readonly tolerance?: Tolerance | null;
  readonly watts?: number | null;
  readonly volts?: number | null;
};

/** Whose part it is, and what is known besides its line: the rules in force, the year of the set, what the user says. */
export type Whose = {
  readonly id: string;
  readonly document: string;
  readonly inForce: RulesInForce;
  readonly era?: number | null;
  readonly said?: Said;
};

/** What a section or piece was split from, its mark, and its pins; left out for a part of its own. */
export type SplitFrom = {
  readonly parent: string | null;
  readonly suffix: string | null;
  readonly pins: string | null;
  readonly whole: ListedPart | null;
};

/** The class of a part, or that of what it was split from. */
function ownClass(part: ListedPart & Partial<SplitFrom>, era: number | null): Recognised {
  if (!part.whole) return classOf(part, era);
  const whole = classOf(part.whole, era);
  return { ...whole, id: pieceClass(whole.id, part) };
}

/** A field as the line or a note states it; a ditto or a reference is still the list's own line. */
function listedFact<T>(part: ListedPart, field: ListedField, value: T | null): Fact<T> | null {
  if (value === null) return null;
  const borrowed = part.from[field];
  if (borrowed?.by === "note") return fact(value, "note", borrowed.at);
  return fact(value, "line", borrowed?.at ?? lineOf(part));
}

/** What the line says of the part's place; a piece that was split off stands for itself. */
function listedAsOf({ valueState, partOf, whole }: ListedPart & Partial<SplitFrom>): ListedAs | null {
  if (valueState === "not-fitted") return "not fitted";
  if (partOf !== null && !whole) return `part of ${partOf}`;
  return valueState === "selected-in-test" ? "selected in test" : null;
}

const lineOf = (part: ListedPart) => (part.lines.length > 0 ? `line ${part.lines[0]}` : "as given");

const said = <T>(value: T | null | undefined): Fact<T> | null =>
  value === null || value === undefined ? null : fact(value, "user", "you");

/** A class or use that was worked out: a Fact of the line, or of a default where it is no more than a guess. */
function recognisedFact(part: ListedPart, found: Recognised): Fact<string> {
  const from = found.sure === "a guess" ? "default" : "line";
  return { ...fact(found.id, from, `${lineOf(part)}: ${found.why}`), sure: found.sure };
}

/** The tolerance that stands in for an unstated one: the class's, else what old electrolytics of these volts were allowed. */
function unstatedTolerance(row: Rule, volts: number | null): Fact<Tolerance> | null {
  if (row.unstatedLow !== null && row.unstatedHigh !== null)
    return fact({ minus: -row.unstatedLow, plus: row.unstatedHigh }, "default", `type ${row.id}`);
  if (!row.id.startsWith("elec_")) return null;
  const band = ELECTROLYTIC_TOLERANCES.find(({ upToVolts }) => (volts ?? 0) <= upToVolts);
  return band ? fact(band.tolerance, "default", "old electrolytics by volts") : null;
}

/**
 * A listed part with everything the list left unsaid, each field as a Fact that says where it comes from.
 *
 * The user outranks the line, a line a note, a note the default of its class; what is printed is never overwritten. A
 * class or use that was worked out says how sure that is. Takes one designator (the first) and one section or piece.
 *
 * @example complete(listed, { id: "HL-1", document: "factory", inForce: DEFAULTS_IN_FORCE }).watts // { value: 0.5, from: "default", at: "type carbon_comp" }
 */
export function complete(part: ListedPart & Partial<SplitFrom>, whose: Whose): Part {
  const user = whose.said ?? {};
  const className = said(user.className) ?? recognisedFact(part, ownClass(part, whose.era ?? null));
  const use = roleOf(part);
  const row = whose.inForce.rules.find((rule) => rule.scope === "class" && rule.id === className.value);
  const standIn = (value: number | null | undefined) =>
    value === null || value === undefined ? null : fact(value, "default", `type ${className.value}`);
  const volts = said(user.volts) ?? listedFact(part, "volts", part.volts) ?? standIn(row?.unstatedVolts);
  const tolerance = said(user.tolerance) ?? listedFact(part, "tolerance", part.tolerance);
  return {
    id: whose.id,
    document: whose.document,
    section: part.section,
    designator: part.designators[0] ?? "",
    parent: part.parent ?? null,
    suffix: part.suffix ?? null,
    kind: part.kind,
    printed: part.printed,
    value: said(user.value) ?? listedFact(part, "value", part.value),
    span: part.valueMin !== null && part.valueMax !== null ? { min: part.valueMin, max: part.valueMax } : null,
    tolerance: tolerance ?? (row ? unstatedTolerance(row, volts?.value ?? null) : null),
    watts: said(user.watts) ?? listedFact(part, "watts", part.watts) ?? standIn(row?.unstatedWatts),
    volts,
    construction: listedFact(part, "construction", part.construction),
    dielectric: listedFact(part, "dielectric", part.dielectric),
    temperatureCoefficient: listedFact(part, "temperatureCoefficient", part.temperatureCoefficient),
    taper: part.taper,
    pins: part.pins ?? null,
    listedAs: listedAsOf(part),
    quantity: part.quantity,
    className,
    role: said(user.role) ?? (use ? recognisedFact(part, use) : null),
    warnings: part.warnings,
  };
}
