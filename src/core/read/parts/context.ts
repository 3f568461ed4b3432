import type { Kind } from "../../part.js";
import type { Unit } from "../../quantity/notation/units.js";
import type { Writing } from "../words/tokens.js";

/** What a bare capital M on a resistor means in a document, and how that was settled. */
export type Dialect = {
  readonly capitalM: "thousand" | "million" | null;
  readonly by: "note" | "list" | "user" | null;
  /** Whether "meg" is printed for millions as well, so that an M could have been meant otherwise. */
  readonly megPrinted: boolean;
};

/** The units that a document's notes give to bare numbers: of capacitors by how they are printed, of others by kind. */
export type BareUnits = {
  readonly wholes: Unit | null;
  readonly decimals: Unit | null;
  readonly electrolytics: Unit | null;
  readonly henries: Unit | null;
};

/** All of a document that a single line needs to be read. */
export type Context = { readonly writing: Writing; readonly dialect: Dialect; readonly units: BareUnits };

/** What is measured in a part's value: ohms, farads, henries; null for kinds without a value of the three. */
export const MEASURE_OF: Readonly<Partial<Record<Kind, "ohm" | "farad" | "henry">>> = {
  resistor: "ohm",
  potentiometer: "ohm",
  thermistor: "ohm",
  capacitor: "farad",
  inductor: "henry",
};
