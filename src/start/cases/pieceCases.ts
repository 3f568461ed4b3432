import { type Kind, type ListedPart, pieceClass, type SaidMeasure, saidFigures } from "../../core/index.js";
import type { Case } from "./case.js";
import type { Given } from "./given.js";
import { isOfPieces, labelsOf } from "./label.js";
import { lineOf } from "./lineOf.js";
import { numberIn } from "./numberIn.js";

/** One thing to decide of a case: the whole part, or one section of it. Base units; null is not given. */
export type PieceCase = {
  readonly name: string | null;
  readonly kind: Kind;
  readonly className: string;
  readonly role: string | null;
  readonly nominal: number | null;
  readonly ratedVolts: number | null;
  readonly amps: number | null;
  readonly pins: string | null;
};

/** Farads given in microfarads: no section is larger than this in farads. */
const LARGEST_FARADS = 0.02;
/** Up to these volts a section has a use of its own, not that of the can. */
const LOW_VOLTS = 50;

/** Microfarads given without their unit are larger than any part in farads. */
export const asFarads = (number: number) => (number > LARGEST_FARADS ? number / 1e6 : number);

/** What one section's row says, in base units where it says them. */
type Row = {
  readonly value: number | null;
  readonly second: number | null;
  readonly volts: number | null;
  readonly amps: number | null;
  readonly role: string | null;
  readonly pins: string | null;
  readonly letter: string | null;
};

const EMPTY: Row = { value: null, second: null, volts: null, amps: null, role: null, pins: null, letter: null };
const ROLE = /^[a-z]+_[a-z_]+$/;
const PINS = /^(?:pins?\s*)?(\w{1,2})\s*(?:-|–|to)\s*(\w{1,2})$/i;

/** A row written as a list: value, then volts or amperes, with letters, uses and pins as texts among them. */
function ofList(row: readonly unknown[]): Row {
  const texts = row.filter((cell) => typeof cell === "string");
  const numbers = row.flatMap((cell) =>
    typeof cell === "number" ? [cell] : typeof cell === "string" ? (numberIn(cell)?.number ?? []) : [],
  );
  const pins = texts.map((text) => PINS.exec(text)).find((found) => found !== null);
  return {
    ...EMPTY,
    value: numbers[0] ?? null,
    second: numbers[1] ?? null,
    role: texts.find((text) => ROLE.test(text)) ?? null,
    pins: pins ? `${pins[1]}-${pins[2]}` : null,
    letter: texts.find((text) => /^[rc]/i.test(text) && !ROLE.test(text)) ?? null,
  };
}

/** A row written with names: `{ uF: 40, V: 150, role: "first_filter" }`, `{ ohms: 2000, mA: 20 }`. */
function ofNames(row: Readonly<Record<string, unknown>>): Row {
  const byMeasure = (wanted: readonly SaidMeasure[]) => {
    for (const [key, cell] of Object.entries(row)) {
      const said = typeof cell === "number" ? { number: cell, measure: null } : numberIn(String(cell));
      const label = labelsOf(key).find((each) => each.measure !== null);
      const measure = said?.measure ?? label?.measure;
      if (said && measure && wanted.includes(measure))
        return Number((said.number * (said.measure ? 1 : label!.factor)).toPrecision(12));
    }
    return null;
  };
  const text = (name: RegExp) => Object.entries(row).find(([key, cell]) => name.test(key) && typeof cell === "string");
  const named = Object.entries(row).find(([key]) => /^(value|nominal|r|c)$/i.test(key))?.[1];
  return {
    ...EMPTY,
    value: byMeasure(["ohm", "farad"]) ?? (typeof named === "number" ? named : null),
    volts: byMeasure(["volt"]),
    amps: byMeasure(["ampere"]),
    role: (text(/role|use/i)?.[1] as string | undefined) ?? null,
    pins: ((text(/pin/i)?.[1] as string | undefined) ?? null)?.replace(PINS, "$1-$2") ?? null,
    letter:
      (text(/kind|type|^el/i)?.[1] as string | undefined) ??
      (/(^|,)(r|ohms?)(,|$)/i.test(Object.keys(row).join()) ? "R" : null),
  };
}

const LETTERED = /^\s*([RC])\d*\b[\s:=]*/i;

/** A row written as a line of a list: "3500 ohm 15 mA", "C 250 mmf", "4 mf 400 V". */
function ofText(text: string, ofOhms: boolean): Row {
  const letter = LETTERED.exec(text)?.[1] ?? null;
  const kind = ofOhms || /r/i.test(letter ?? "") ? "resistor" : "capacitor";
  const said = saidFigures(text, { kind, className: "" });
  const { value, volts } = lineOf(text.replace(LETTERED, ""), kind);
  return { ...EMPTY, value, volts, amps: said.get("amps")?.[0] ?? null, letter };
}

function rowOf(row: unknown, ofOhms: boolean): Row {
  if (Array.isArray(row)) return ofList(row);
  if (typeof row === "string") return ofText(row, ofOhms);
  if (typeof row === "number") return ofList([row]);
  return ofNames((row ?? {}) as Record<string, unknown>);
}

/** The use of a case; no special duty and nothing said are both unknown. */
export function roleOf(one: Case): string | null {
  return one.role && one.role !== "general" ? one.role : null;
}

const OF_OHMS: readonly string[] = ["strip_ww", "ballast", "line_cord_r"];

/** One section of a can, block or tapped resistor, or one element of a network. */
function pieceOf(row: Row, index: number, one: Case): PieceCase {
  const isNetwork = one.cls === "printed_rc";
  const ofOhms = isNetwork ? /^r/i.test(row.letter ?? "c") : OF_OHMS.includes(one.cls);
  const kind = ofOhms ? "resistor" : "capacitor";
  const nominal = ofOhms || row.value === null ? row.value : asFarads(row.value);
  const volts = ofOhms || isNetwork ? null : (row.volts ?? row.second);
  const ownRole = volts !== null && volts <= LOW_VOLTS ? null : roleOf(one);
  return {
    name: `${isNetwork ? "element" : "section"} ${index + 1}`,
    kind,
    className: pieceClass(one.cls, { kind, volts }),
    role: row.role ?? (isNetwork ? null : ownRole),
    nominal,
    ratedVolts: volts,
    amps: ofOhms ? (row.amps ?? row.second) : null,
    pins: row.pins,
  };
}

/** The rows of a case: given as rows, given as lists of one figure each, or printed in its line. */
function rowsOf(one: Case, { figures, rest }: Given, line: ListedPart): readonly Row[] {
  const told = Object.entries(rest).find(([key, cell]) => isOfPieces(key) && Array.isArray(cell));
  const { roles, pins } = rest;
  const lists = (row: Row, i: number): Row => ({
    ...row,
    volts: row.volts ?? row.second ?? listAt(figures.get("ratedVolts"), i) ?? line.volts,
    amps: row.amps ?? row.second ?? listAt(figures.get("amps"), i),
    role: row.role ?? (Array.isArray(roles) ? (roles[i] as string) : null),
    pins: row.pins ?? (Array.isArray(pins) ? String(pins[i]).replace(PINS, "$1-$2") : null),
  });
  const ofOhms = OF_OHMS.includes(one.cls);
  if (told) return (told[1] as readonly unknown[]).map((row) => rowOf(row, ofOhms)).map(lists);
  const nominals = figures.get("nominal") ?? [];
  if (nominals.length > 1) return nominals.map((value) => ({ ...EMPTY, value })).map(lists);
  if (one.cls === "printed_rc" || ofOhms)
    return (line.inner ?? [])
      .map(({ kind, value, pins }) => ({ ...EMPTY, value, pins: pins ?? null, letter: kind }))
      .map(lists);
  return (line.sections ?? []).map(({ farads, volts }) => ({ ...EMPTY, value: farads, volts })).map(lists);
}

const listAt = (list: readonly number[] | undefined, index: number) =>
  list === undefined ? null : (list[index] ?? list[0] ?? null);

/** The sections of a case, or none where it is one part. */
export function pieceCases(one: Case, given: Given, line: ListedPart): readonly PieceCase[] {
  return rowsOf(one, given, line).map((row, index) => pieceOf(row, index, one));
}
