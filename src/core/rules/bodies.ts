/** TABLE: body sizes of old and new parts. */
import type { Kind } from "../part.js";

/** A body's size in metres; `value`, `watts`, `volts` say which part of that type it is. */
export type Body = {
  readonly kind: Kind;
  readonly type: string;
  readonly value: number | null;
  readonly watts: number | null;
  readonly volts: number | null;
  readonly lengthMetres: number;
  readonly diameterMetres: number;
  readonly leadMetres: number | null;
  readonly source: "seen" | "from memory";
};

type Size = readonly [length: number, diameter: number];

const resistor = (
  type: string,
  watts: number,
  [length, diameter]: Size,
  lead: number,
  source: Body["source"],
): Body => ({
  kind: "resistor",
  type,
  value: null,
  watts,
  volts: null,
  lengthMetres: length / 1000,
  diameterMetres: diameter / 1000,
  leadMetres: lead > 0 ? lead / 1000 : null,
  source,
});

const capacitor = (type: string, value: number, volts: number, [length, diameter]: Size): Body => ({
  kind: "capacitor",
  type,
  value,
  watts: null,
  volts,
  lengthMetres: length / 1000,
  diameterMetres: diameter / 1000,
  leadMetres: null,
  source: "from memory",
});

/** Bodies in millimetres of length and diameter. Seen: maker-independent size tables; the rest from memory, makers differ. */
export const BODIES: readonly Body[] = [
  resistor("carbon_comp_old", 0.25, [6.3, 2.4], 0.6, "seen"),
  resistor("carbon_comp_old", 0.5, [9.5, 3.6], 0.7, "seen"),
  resistor("carbon_comp_old", 1, [14.3, 5.7], 0.92, "seen"),
  resistor("carbon_comp_old", 2, [17.5, 7.9], 1, "from memory"),
  resistor("dogbone_1930s", 0.5, [25, 6], 1, "from memory"),
  resistor("dogbone_1930s", 1, [38, 8], 1, "from memory"),
  resistor("film_modern", 0.125, [3.2, 1.8], 0.45, "seen"),
  resistor("film_modern", 0.25, [6.3, 2.3], 0.6, "seen"),
  resistor("film_modern", 0.5, [8.5, 3.2], 0.6, "seen"),
  resistor("film_modern", 1, [11, 5], 0.6, "seen"),
  resistor("film_modern", 2, [15, 5], 0.7, "seen"),
  resistor("film_modern", 3, [16, 5.5], 0.7, "seen"),
  resistor("film_mini_0.6W", 0.6, [6.3, 2.3], 0.6, "from memory"),
  resistor("ww_modern_axial", 5, [17, 8], 0.8, "from memory"),
  resistor("ww_modern_axial", 7, [32, 8.5], 0.75, "seen"),
  resistor("cement_block", 5, [22, 10], 0.8, "from memory"),
  resistor("cement_block", 10, [48, 10], 0.8, "from memory"),
  resistor("metal_clad", 25, [28, 28], 0, "from memory"),
  resistor("metal_clad", 50, [50, 30], 0, "from memory"),
  capacitor("paper_wax_old", 0.01e-6, 600, [38, 11]),
  capacitor("paper_wax_old", 0.05e-6, 400, [38, 14]),
  capacitor("paper_wax_old", 0.1e-6, 400, [44, 16]),
  capacitor("paper_moulded_old", 0.022e-6, 600, [27, 9]),
  capacitor("paper_moulded_old", 0.1e-6, 400, [35, 11]),
  capacitor("film_axial", 0.01e-6, 630, [15, 6]),
  capacitor("film_axial", 0.047e-6, 630, [19, 8]),
  capacitor("film_axial", 0.1e-6, 630, [25, 9.5]),
  capacitor("film_axial", 0.22e-6, 630, [30, 12]),
  capacitor("film_radial_box", 0.1e-6, 630, [18, 11]),
  capacitor("pp_axial", 0.0068e-6, 1600, [20, 9]),
  capacitor("pp_axial", 0.047e-6, 1600, [32, 14]),
  capacitor("alu_axial", 10e-6, 450, [29, 12.5]),
  capacitor("alu_axial", 22e-6, 450, [30, 16]),
  capacitor("alu_axial", 47e-6, 450, [40, 18]),
  capacitor("alu_radial", 10e-6, 450, [20, 10]),
  capacitor("alu_radial", 22e-6, 450, [20, 12.5]),
  capacitor("alu_radial", 47e-6, 450, [25, 16]),
  capacitor("alu_radial", 47e-6, 160, [20, 10]),
  capacitor("disc_y2", 10e-9, 250, [13, 5]),
  capacitor("x2_box", 0.1e-6, 275, [18, 11]),
];
