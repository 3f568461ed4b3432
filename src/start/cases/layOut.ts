import {
  complete,
  type Finding,
  type GivenLimits,
  type Kind,
  type Part,
  type Place,
  placeSaid,
  type Ratings,
  type Reading,
  type RuleFor,
  type RulesInForce,
  type SetFacts,
  type Settings,
  statedIn,
  testSaid,
} from "../../core/index.js";
import { besideLine, withNotes } from "./besideLine.js";
import type { Case } from "./case.js";
import { findingsOf } from "./findings.js";
import { type Figure, type Given, givenOf } from "./given.js";
import { lineOf } from "./lineOf.js";
import { listedOf } from "./listedCase.js";
import { asFarads, type PieceCase, pieceCases, roleOf } from "./pieceCases.js";
import { readingsOf } from "./readings.js";
import { ruledByCase } from "./ruledByCase.js";

/** A part of a case laid out for the stages, with everything known of it. */
export type Laid = {
  readonly name: string | null;
  readonly part: Part;
  readonly place: Place;
  readonly readings: readonly Reading[];
  readonly findings: readonly Finding[];
  readonly limits: GivenLimits;
  readonly stock: readonly number[] | null;
  readonly set: SetFacts;
  readonly ruled: Partial<RuleFor>;
  readonly room: Ratings["room"];
};

/** A case laid out: its pieces, the whole where it is split, and the settings it changes. */
export type LaidOut = { readonly pieces: readonly Laid[]; readonly whole: Laid | null; readonly settings: Settings };

/** What is split has no value of its own, whatever its use says of values. */
const HAS_PIECES: Partial<RuleFor> = { valueMode: "split" };

/** A part that is new old stock is held to its own mark: it has drifted on the shelf. */
const NEW_OLD_STOCK = /\bnos\b|new.?old.?stock|\bn\.o\.s/i;

/** Lays a case out for the stages: what its `given` says outranks what its line says. */
export function layOut(one: Case, defaults: RulesInForce): LaidOut {
  const kind = defaults.rules.find((rule) => rule.scope === "class" && rule.id === one.cls)?.kind ?? "other";
  const of = { kind, className: one.cls };
  const line = lineOf(one.partsListLine ?? "", kind);
  const told = givenOf(one.given ?? {}, one.context ?? "", of, defaults.settings);
  const given = withNotes(besideLine(told, line), one.partsListLine ?? "", of);
  const newOldStock =
    NEW_OLD_STOCK.test(`${one.partsListLine} ${one.context} ${one.given?.source ?? ""}`) || one.given?.nos === true;
  const settings = newOldStock ? { ...given.settings, r_drift_rule: "marked" } : given.settings;
  const whole: PieceCase = {
    name: null,
    kind,
    className: one.cls,
    role: roleOf(one),
    nominal: null,
    ratedVolts: null,
    amps: null,
    pins: null,
  };
  const pieces = pieceCases(one, given, line);
  const lay = (piece: PieceCase, index: number) => laid(one, given, piece, index, defaults);
  if (pieces.length === 0) return { pieces: [lay(whole, 0)], whole: null, settings };
  return { pieces: pieces.map(lay), whole: { ...lay(whole, 0), ruled: HAS_PIECES }, settings };
}

function laid(one: Case, given: Given, piece: PieceCase, index: number, inForce: RulesInForce): Laid {
  const figure = statedIn(given.figures, index);
  const listed = listedOf(one, given, piece, figure);
  const said = { className: piece.className, role: piece.role, value: piece.nominal ?? listed.value };
  const part = complete(listed, { id: one.id, document: "", inForce, era: figure("era"), said });
  return {
    name: piece.name,
    part,
    place: placeOf(piece, given, figure),
    readings: readingsOf(one, given, piece.kind, figure),
    findings:
      piece.name === null || index === 0 ? [...findingsOf(one, given, piece.kind), ...testSaid(one.cls, figure)] : [],
    limits: { insulationOhms: figure("insulationLimit"), esrOhms: figure("esrLimit"), leakAmps: figure("leakLimit") },
    stock: stockOf(given, piece.kind),
    set: setOf(one),
    ruled: ruledByCase(given),
    room: roomOf(figure),
  };
}

/** What the words of a case say of the set. */
function setOf({ equipment = "", context = "" }: Case): SetFacts {
  const words = `${equipment} ${context}`;
  return {
    pictureTube: /\btv\b|televis|picture tube/i.test(words),
    liveChassis: /ac.?dc|transformerless|live chassis/i.test(words),
  };
}

/** The place of one piece: a section has its own current, and what a case prints as a resistor's volts stands across it. */
function placeOf(piece: PieceCase, given: Given, figure: Figure): Place {
  const place = placeSaid(piece.kind, figure, given.figures.get("nodeVolts") ?? []);
  const farads = place.rectifierFarads;
  return {
    ...place,
    volts: place.volts ?? (piece.kind === "resistor" ? figure("ratedVolts") : null),
    amps: piece.amps ?? place.amps,
    rectifierFarads: farads === null ? null : asFarads(farads),
  };
}

/** The room of a case in metres; null where it gives none. */
function roomOf(figure: Figure): Ratings["room"] {
  const [length, diameter, span] = [figure("roomLength"), figure("roomDiameter"), figure("tagSpan")];
  if (length === null && diameter === null && span === null) return null;
  return { lengthMetres: length, diameterMetres: diameter, spanMetres: span };
}

function stockOf(given: Given, kind: Kind): readonly number[] | null {
  const list = given.figures.get("stock");
  return list ? list.map((value) => (kind === "capacitor" ? asFarads(value) : value)) : null;
}
