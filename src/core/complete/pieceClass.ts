import type { Kind } from "../part.js";

/** Up to these volts an electrolytic section is a bypass or bias section. Common practice. */
const LOW_VOLTS = 50;

/**
 * The class by which one section of a can, or one piece of a printed network, is decided on its own.
 *
 * Sections and pieces keep the class of the whole, for they are kept or lost together; a can's section of few volts is a
 * bypass or bias one and goes by that row.
 *
 * @param whole Class of the can, block, strip or network.
 * @example pieceClass("elec_multi", { kind: "capacitor", volts: 25 }) // "elec_bias"
 */
export function pieceClass(whole: string, piece: { readonly kind: Kind; readonly volts: number | null }): string {
  return whole === "elec_multi" && piece.volts !== null && piece.volts <= LOW_VOLTS ? "elec_bias" : whole;
}
