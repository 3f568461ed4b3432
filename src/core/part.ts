import type { Fact } from "./fact.js";

/** What kind of thing a line of a list is. */
export const KINDS = [
  "resistor",
  "capacitor",
  "potentiometer",
  "network",
  "inductor",
  "transformer",
  "rectifier",
  "fuse",
  "lamp",
  "thermistor",
  "tube",
  "switch",
  "other",
] as const;
export type Kind = (typeof KINDS)[number];

/** The kind that a cell names; "other" for an empty cell or any other word. @example kindNamed("resistor") // "resistor" */
export const kindNamed = (word: string | null): Kind => KINDS.find((kind) => kind === word) ?? "other";

/** How a resistor is built, in the words of lists and catalogues. */
export type Construction = "composition" | "film" | "metal-film" | "metal-oxide" | "carbon-film" | "wirewound";

/** What a capacitor is made of, in the words of lists and catalogues. */
export type Dielectric =
  | "paper"
  | "mica"
  | "silver-mica"
  | "ceramic"
  | "electrolytic"
  | "tantalum"
  | "film"
  | "polyester"
  | "polypropylene"
  | "polystyrene"
  | "oil"
  | "air";

/** What a list says about a part's value. */
export type ValueState =
  | "stated"
  | "range"
  | "selected-in-test"
  | "missing"
  | "not-fitted"
  | "alternatives"
  | "unreadable";

/**
 * What a list says of a part's place that stands above every rule: nothing is fitted there, its value was chosen when the
 * set was tested, or it sits inside another part.
 */
export type ListedAs = "not fitted" | "selected in test" | `part of ${string}`;

/** A tolerance as two ratios, both positive: -20/+80 % is { minus: 0.2, plus: 0.8 }. */
export type Tolerance = { readonly minus: number; readonly plus: number };

/** A span of values in base units, ends included. */
export type Span = { readonly min: number; readonly max: number };

/** The six things a reading may warn of; there are no others. */
export const WARNINGS = [
  "ambiguous-m",
  "implausible-value",
  "unreadable",
  "duplicate-designator",
  "conflict",
  "unit-assumed",
] as const;
export type Warning = { readonly code: (typeof WARNINGS)[number]; readonly text: string };

/** One section of a can: the letter or mark printed for it, base units. */
export type CanSection = {
  readonly suffix: string | null;
  readonly farads: number | null;
  readonly volts: number | null;
};

/** One piece inside a network or a tapped resistor; `pins` are those between which it lies ("1-2"), where the list says so. */
export type InnerPart = { readonly kind: Kind; readonly value: number | null; readonly pins?: string | null };

/** Where a field of a listed part was taken from when not from its own line. */
export type Borrowed = "note" | "ditto" | "reference";

/**
 * One part as a list states it: fields that neither the line nor a note, ditto or reference states are null.
 *
 * Base units: ohms, farads, henries, watts, volts. `lines` are 1-based source lines. `printed` is the list's own
 * writing of the part, `valueText` that of its value; `use` is what the list says it does ("plate load"), if anything.
 */
export type ListedPart = {
  readonly lines: readonly number[];
  readonly printed: string;
  readonly valueText: string;
  readonly section: string | null;
  readonly designators: readonly string[];
  readonly kind: Kind;
  readonly value: number | null;
  readonly valueState: ValueState;
  readonly valueMin: number | null;
  readonly valueMax: number | null;
  readonly tolerance: Tolerance | null;
  readonly watts: number | null;
  readonly volts: number | null;
  readonly construction: Construction | null;
  readonly dielectric: Dielectric | null;
  readonly temperatureCoefficient: string | null;
  readonly taper: string | null;
  readonly quantity: number;
  readonly sections: readonly CanSection[] | null;
  readonly inner: readonly InnerPart[] | null;
  readonly sameAs: string | null;
  readonly partOf: string | null;
  readonly stockNumber: string | null;
  readonly use: string | null;
  readonly from: Readonly<Partial<Record<ListedField, { readonly by: Borrowed; readonly at: string }>>>;
  readonly warnings: readonly Warning[];
};

/** A listed part of which nothing is known: to be filled in with what is. */
export const NOTHING_LISTED: ListedPart = {
  lines: [],
  printed: "",
  valueText: "",
  section: null,
  designators: [],
  kind: "other",
  value: null,
  valueState: "missing",
  valueMin: null,
  valueMax: null,
  tolerance: null,
  watts: null,
  volts: null,
  construction: null,
  dielectric: null,
  temperatureCoefficient: null,
  taper: null,
  quantity: 1,
  sections: null,
  inner: null,
  sameAs: null,
  partOf: null,
  stockNumber: null,
  use: null,
  from: {},
  warnings: [],
};

/** Fields of a listed part that can be borrowed from a note, a ditto or another part. */
export type ListedField =
  | "value"
  | "tolerance"
  | "watts"
  | "volts"
  | "construction"
  | "dielectric"
  | "temperatureCoefficient"
  | "kind";

/**
 * One part with one designator, completed: every field is a Fact, or null where nothing and nobody says.
 *
 * `className` and `role` are ids of rule rows (`carbon_comp`, `plate_load`); `parent` is the designator of the can or
 * network a section was split from, `suffix` its letter or number, `pins` between which it lies in a network.
 */
export type Part = {
  readonly id: string;
  readonly document: string;
  readonly section: string | null;
  readonly designator: string;
  readonly parent: string | null;
  readonly suffix: string | null;
  readonly kind: Kind;
  readonly printed: string;
  readonly value: Fact<number> | null;
  readonly span: Span | null;
  readonly tolerance: Fact<Tolerance> | null;
  readonly watts: Fact<number> | null;
  readonly volts: Fact<number> | null;
  readonly construction: Fact<Construction> | null;
  readonly dielectric: Fact<Dielectric> | null;
  readonly temperatureCoefficient: Fact<string> | null;
  readonly taper: string | null;
  readonly pins: string | null;
  readonly listedAs: ListedAs | null;
  readonly quantity: number;
  readonly className: Fact<string>;
  readonly role: Fact<string> | null;
  readonly warnings: readonly Warning[];
};
