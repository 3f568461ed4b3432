/** TABLE: dial lamps by type number. */

/** A dial lamp: volts as printed ("6-8"), amperes, colour of the bead that carries the filament, base. */
export type DialLamp = {
  readonly type: number;
  readonly volts: string;
  readonly amps: number;
  readonly bead: string;
  readonly base: "screw" | "bayonet";
};

/** Source: published handbook tables, from memory. */
export const DIAL_LAMPS: readonly DialLamp[] = [
  { type: 40, volts: "6-8", amps: 0.15, bead: "brown", base: "screw" },
  { type: 41, volts: "2.5", amps: 0.5, bead: "white", base: "screw" },
  { type: 42, volts: "3.2", amps: 0.35, bead: "green", base: "screw" },
  { type: 43, volts: "2.5", amps: 0.5, bead: "white", base: "bayonet" },
  { type: 44, volts: "6-8", amps: 0.25, bead: "blue", base: "bayonet" },
  { type: 46, volts: "6-8", amps: 0.25, bead: "blue", base: "screw" },
  { type: 47, volts: "6-8", amps: 0.15, bead: "brown", base: "bayonet" },
  { type: 48, volts: "2", amps: 0.06, bead: "pink", base: "screw" },
  { type: 49, volts: "2", amps: 0.06, bead: "pink", base: "bayonet" },
  { type: 50, volts: "6-8", amps: 0.2, bead: "white", base: "screw" },
  { type: 51, volts: "6-8", amps: 0.2, bead: "white", base: "bayonet" },
  { type: 55, volts: "6-8", amps: 0.4, bead: "white", base: "bayonet" },
  { type: 292, volts: "2.9", amps: 0.17, bead: "white", base: "screw" },
];
