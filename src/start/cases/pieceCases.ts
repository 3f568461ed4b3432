import { type Kind, pieceClass } from "../../core/index.js";
import type { Case } from "./case.js";

/** One thing to decide of a case: the whole part, or one section of it. Base units; null is not given. */
export type PieceCase = {
  readonly name: string | null;
  readonly kind: Kind;
  readonly className: string;
  readonly role: string | null;
  readonly nominal: number | null;
  readonly ratedVolts: number | null;
  readonly amps: number | null;
};

/** Farads given in microfarads: no section is larger than this in farads. */
const LARGEST_FARADS = 0.02;
/** Up to these volts a section has a use of its own, not that of the can. */
const LOW_VOLTS = 50;

const asFarads = (number: number) => (number > LARGEST_FARADS ? number / 1e6 : number);

const numberAt = (row: unknown, index: number, ...names: readonly RegExp[]): number | null => {
  if (Array.isArray(row)) return (row.filter((cell) => typeof cell === "number") as number[])[index] ?? null;
  const found = Object.entries((row ?? {}) as object).find(([key]) => names.some((name) => name.test(key)));
  return typeof found?.[1] === "number" ? found[1] : null;
};

const textAt = (row: unknown, name: RegExp): string | null => {
  if (Array.isArray(row)) return (row.find((cell) => typeof cell === "string" && name.test(cell)) as string) ?? null;
  const found = Object.entries((row ?? {}) as object).find(([key]) => /role|use/i.test(key));
  return typeof found?.[1] === "string" ? found[1] : null;
};

/** A section of a tapped resistor: ohms and its own current. */
function ohmSection(row: unknown, index: number, one: Case): PieceCase {
  return {
    name: `section ${index + 1}`,
    kind: "resistor",
    className: one.cls,
    role: roleOf(one),
    nominal: numberAt(row, 0, /ohm|^r|value|nominal/i),
    ratedVolts: null,
    amps: numberAt(row, 1, /amp|^i|current/i),
  };
}

/** A section of a can or block: farads, volts, and its own use where one is given. */
function faradSection(row: unknown, index: number, one: Case): PieceCase {
  const farads = numberAt(row, 0, /farad|uf$|^f$|^c$|value|nominal/i);
  const ratedVolts = numberAt(row, 1, /volt|v$/i);
  const roles = one.given?.roles;
  const role = textAt(row, /^[a-z]+_[a-z]+$/) ?? (Array.isArray(roles) ? (roles[index] as string) : null);
  const value = farads === null ? null : asFarads(farads);
  return {
    name: `section ${index + 1}`,
    kind: "capacitor",
    className: pieceClass(one.cls, { kind: "capacitor", value, volts: ratedVolts }),
    role: role ?? (ratedVolts !== null && ratedVolts <= LOW_VOLTS ? null : roleOf(one)),
    nominal: value,
    ratedVolts,
    amps: null,
  };
}

/** An element of a printed network: R or C and its value. */
function element(row: unknown, index: number, one: Case): PieceCase {
  const letter = Array.isArray(row)
    ? row[0]
    : Object.values((row ?? {}) as object).find((cell) => typeof cell === "string");
  const kind = /^r/i.test(String(letter)) ? "resistor" : "capacitor";
  const nominal = numberAt(row, 0, /value|nominal|ohm|farad/i);
  const className = pieceClass(one.cls, { kind, value: nominal, volts: null });
  return { name: `element ${index + 1}`, kind, className, role: null, nominal, ratedVolts: null, amps: null };
}

/** The use of a case; no special duty and nothing said are both unknown. */
export function roleOf(one: Case): string | null {
  return one.role && one.role !== "general" ? one.role : null;
}

/** The sections of a case, or none where it is one part. */
export function pieceCases(one: Case): readonly PieceCase[] {
  const { sections, elements } = one.given ?? {};
  if (Array.isArray(elements)) return elements.map((row, index) => element(row, index, one));
  if (!Array.isArray(sections)) return [];
  const ofOhms = one.cls === "strip_ww" || one.cls === "ballast" || one.cls === "line_cord_r";
  return sections.map((row, index) => (ofOhms ? ohmSection(row, index, one) : faradSection(row, index, one)));
}
