import type { Kind } from "../part.js";
import { BODIES, type Body } from "../rules/bodies.js";

/** Which rows of the table of bodies show the size of a technology or of an old class. */
const BODY_TYPES: Readonly<Record<string, string>> = {
  carbon_film: "film_modern",
  metal_film: "film_modern",
  metal_film_large: "film_modern",
  metal_oxide: "film_modern",
  carbon_comp_new: "carbon_comp_old",
  wirewound: "ww_modern_axial",
  metal_clad: "metal_clad",
  polyester: "film_axial",
  polypropylene: "film_axial",
  pp_film_foil: "pp_axial",
  alu_axial: "alu_axial",
  alu_radial: "alu_radial",
  y_class: "disc_y2",
  x_class: "x2_box",
  carbon_comp: "carbon_comp_old",
  paper_wax: "paper_wax_old",
  paper_moulded: "paper_moulded_old",
};

/** What of a part tells its usual size: watts of a resistor, value and volts of a capacitor. */
export type Sized = {
  readonly kind: Kind;
  readonly value: number | null;
  readonly watts: number | null;
  readonly volts: number | null;
};

/**
 * The usual body of a technology (or old class) that has at least the watts, or the value and volts, asked for; null
 * where the table has none. Makers differ.
 *
 * @example usualBody("metal_film", { kind: "resistor", value: 470e3, watts: 1, volts: 350 })?.lengthMetres // 0.011
 */
export function usualBody(name: string, part: Sized): Body | null {
  const enough = (body: Body) =>
    part.kind === "resistor"
      ? (body.watts ?? 0) >= (part.watts ?? Number.POSITIVE_INFINITY)
      : (body.value ?? 0) >= (part.value ?? Number.POSITIVE_INFINITY) && (body.volts ?? 0) >= (part.volts ?? 0);
  return BODIES.find((body) => body.type === BODY_TYPES[name] && enough(body)) ?? null;
}
