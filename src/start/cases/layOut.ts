import {
  complete,
  decodeBands,
  diodeFinding,
  type Finding,
  fuseSays,
  type GivenLimits,
  type Kind,
  type ListedPart,
  type Part,
  PartsError,
  type Place,
  type Reading,
  type RulesInForce,
  readTolerance,
  type Settings,
  type Tolerance,
  UNKNOWN_PLACE,
} from "../../core/index.js";
import type { Case } from "./case.js";
import { findingsOf } from "./findings.js";
import { type Given, givenOf } from "./given.js";
import type { GivenName } from "./givenNames.js";
import { lineOf } from "./lineOf.js";
import { type PieceCase, pieceCases, roleOf } from "./pieceCases.js";

/** A part of a case laid out for the stages, with everything known of it. */
export type Laid = {
  readonly name: string | null;
  readonly part: Part;
  readonly place: Place;
  readonly readings: readonly Reading[];
  readonly findings: readonly Finding[];
  readonly limits: GivenLimits;
  readonly stock: readonly number[] | null;
};

/** A case laid out: its pieces, the whole where it is split, and the settings it changes. */
export type LaidOut = { readonly pieces: readonly Laid[]; readonly whole: Laid | null; readonly settings: Settings };

/** A part that is new old stock is held to its own mark: it has drifted on the shelf. */
const NEW_OLD_STOCK = /\bnos\b|new.?old.?stock|\bn\.o\.s/i;

/** Lays a case out for the stages: what its `given` says outranks what its line says. */
export function layOut(one: Case, defaults: RulesInForce): LaidOut {
  const given = givenOf(one.given ?? {}, defaults.settings);
  const newOldStock =
    NEW_OLD_STOCK.test(`${one.partsListLine} ${one.context} ${one.given?.source ?? ""}`) || one.given?.nos === true;
  const settings = newOldStock ? { ...given.settings, r_drift_rule: "marked" } : given.settings;
  const kind = defaults.rules.find((rule) => rule.scope === "class" && rule.id === one.cls)?.kind ?? "other";
  const whole: PieceCase = {
    name: null,
    kind,
    className: one.cls,
    role: roleOf(one),
    nominal: null,
    ratedVolts: null,
    amps: null,
  };
  const pieces = pieceCases(one);
  const lay = (piece: PieceCase, index: number) => laid(one, given, piece, index, defaults);
  if (pieces.length === 0) return { pieces: [lay(whole, 0)], whole: null, settings };
  return { pieces: pieces.map(lay), whole: lay(whole, 0), settings };
}

function laid(one: Case, given: Given, piece: PieceCase, index: number, inForce: RulesInForce): Laid {
  const figure = (name: GivenName): number | null => {
    const list = given.figures.get(name);
    if (list && name === "stringVolts") return list.reduce((sum, volts) => sum + volts, 0);
    return list ? (list[index] ?? list[0] ?? null) : null;
  };
  const listed = listedOf(one, given, piece, figure);
  const said = { className: piece.className, role: piece.role };
  const part = complete(listed, { id: one.id, document: "", inForce, era: figure("era"), said });
  return {
    name: piece.name,
    part,
    place: placeOf(piece, figure),
    readings: readingsOf(one, given, piece.kind, figure),
    findings: piece.name === null || index === 0 ? [...findingsOf(one), ...diodeFindings(one, figure)] : [],
    limits: { insulationOhms: figure("insulationLimit"), esrOhms: figure("esrLimit"), leakAmps: figure("leakLimit") },
    stock: stockOf(given, piece.kind),
  };
}

function diodeFindings(one: Case, figure: Figure): readonly Finding[] {
  const found = diodeFinding(one.cls, { forwardVolts: figure("forwardVolts"), reverseOhms: figure("reverseOhms") });
  return found ? [found] : [];
}

type Figure = (name: GivenName) => number | null;

/** The part as its line says it, with the case's own figures in their place. */
function listedOf(one: Case, given: Given, piece: PieceCase, figure: Figure): ListedPart {
  const isPiece = piece.name !== null;
  const line = lineOf(one.partsListLine ?? "", piece.kind);
  const colours = coloursOf(given, piece.kind);
  const tc = given.rest.tc ?? given.rest.tempco ?? given.rest.temperatureCoefficient;
  return {
    ...line,
    printed: piece.kind === "fuse" ? fuseLine(line.printed, given) : line.printed,
    kind: piece.kind,
    value: piece.nominal ?? (isPiece ? null : (colours?.value ?? figure("nominal") ?? line.value)),
    tolerance: toleranceOf(given) ?? colours?.tolerance ?? line.tolerance,
    watts: isPiece && piece.kind === "resistor" ? null : (figure("watts") ?? line.watts),
    volts: piece.ratedVolts ?? figure("ratedVolts") ?? (isPiece ? null : line.volts),
    temperatureCoefficient: typeof tc === "string" ? tc : line.temperatureCoefficient,
    taper: typeof given.rest.taper === "string" ? given.rest.taper : line.taper,
    sections: null,
    inner: null,
  };
}

/** A fuse's line with the amperes and speed that the case gives beside it. */
function fuseLine(printed: string, { figures, rest }: Given): string {
  const amps = figures.get("amps")?.[0];
  return fuseSays(printed).amps === null && amps !== undefined ? `${printed} ${amps} A ${rest.speed ?? ""}` : printed;
}

function toleranceOf(given: Given): Tolerance | null {
  if (given.rest.tolStated === false) return null;
  const ratio = given.figures.get("tolerance")?.[0];
  if (ratio !== undefined) return { minus: ratio, plus: ratio };
  const text = given.rest.tol ?? given.rest.tolerance;
  return typeof text === "string" ? readTolerance(text) : null;
}

/** Body, end and dot, or a row of bands, as `given` names them. */
function coloursOf(given: Given, kind: Kind): { readonly value: number; readonly tolerance: Tolerance | null } | null {
  const { body, end, dot, bands } = given.rest;
  if (kind !== "resistor") return null;
  try {
    if (typeof body === "string")
      return decodeBands([body, end, dot].filter(Boolean).join(" "), "body-end-dot").reading;
    const row = Array.isArray(bands) ? bands.join(" ") : bands;
    return typeof row === "string" ? decodeBands(row).reading : null;
  } catch (error) {
    if (error instanceof PartsError) return null;
    throw error;
  }
}

/** What stands across a resistor at its worst is the volts it is rated for; a capacitor tells steady volts and peaks apart. */
function placeOf(piece: PieceCase, figure: Figure): Place {
  const peak = figure("peakVolts");
  const warm = figure("warmUpVolts");
  const pulse = figure("pulseVolts");
  const isCapacitor = piece.kind === "capacitor";
  return {
    ...UNKNOWN_PLACE,
    volts: figure("volts") ?? (isCapacitor ? null : peak),
    acVolts: figure("acVolts"),
    peakVolts: isCapacitor ? highest(peak, pulse === null ? null : pulse + (figure("volts") ?? 0)) : warm,
    warmUpVolts: isCapacitor ? warm : null,
    windingVolts: figure("windingVolts"),
    amps: piece.amps ?? figure("amps"),
    rectifierFarads: asFarads(figure("rectifierFarads")),
    gridOhms: figure("gridOhms"),
    loadAmps: figure("loadAmps") ?? figure("amps"),
    plates: figure("plates"),
    dropVolts: figure("dropVolts"),
    stringVolts: figure("stringVolts"),
  };
}

const highest = (a: number | null, b: number | null) => (a === null || b === null ? (a ?? b) : Math.max(a, b));

/** Microfarads given without their unit are larger than any part in farads. */
const asFarads = (number: number | null) => (number !== null && number > 0.02 ? number / 1e6 : number);

function stockOf(given: Given, kind: Kind): readonly number[] | null {
  const list = given.figures.get("stock");
  return list ? list.map((value) => (kind === "capacitor" ? asFarads(value)! : value)) : null;
}

/** Whether a reading was taken in place, by its flag or, without one, by the words of the context. */
function takenInPlace({ context = "" }: Case, { rest }: Given): boolean {
  const flag = rest.inCircuit ?? rest.inPlace ?? (typeof rest.lifted === "boolean" ? !rest.lifted : null);
  return typeof flag === "boolean" ? flag : /not lifted|in circuit|in place/i.test(context);
}

const STATES: Readonly<Record<string, number>> = { open: Number.POSITIVE_INFINITY, short: 0, shorted: 0 };

function readingsOf(one: Case, given: Given, kind: Kind, figure: Figure): readonly Reading[] {
  const accuracy = figure("accuracy");
  const inPlace = takenInPlace(one, given);
  const reading = (quantity: Reading["quantity"], value: number | null): readonly Reading[] =>
    value === null ? [] : [{ quantity, value, inPlace, accuracy }];
  const own = kind === "capacitor" ? "capacitance" : "resistance";
  return [
    ...reading(own, figure("reading")),
    ...reading("insulation", figure("insulation")),
    ...reading("leakage", figure("leakage")),
    ...reading("ESR", figure("esr")),
    ...reading("resistance", STATES[String(given.rest.reading)] ?? null),
  ];
}
