import type { Kind } from "../part.js";

/** Up to these volts an electrolytic section is a bypass or bias section. Common practice. */
const LOW_VOLTS = 50;
/** Below this a capacitor of a network is as mica or ceramic, above it as film for paper. Common practice. */
const FILM_FROM_FARADS = 1e-9;

/**
 * The class by which one section of a can, or one piece of a printed network, is decided on its own.
 *
 * A can's sections are electrolytics, those of few volts bypass or bias ones; sections of blocks, bathtubs and strips
 * keep the class of the whole; a network's resistors and small capacitors go by the network's row, its larger
 * capacitors as paper does.
 *
 * @param whole Class of the can, block, strip or network.
 * @example pieceClass("elec_multi", { kind: "capacitor", value: 20e-6, volts: 25 }) // "elec_bias"
 */
export function pieceClass(
  whole: string,
  piece: { readonly kind: Kind; readonly value: number | null; readonly volts: number | null },
): string {
  if (whole === "elec_multi") return piece.volts !== null && piece.volts <= LOW_VOLTS ? "elec_bias" : "elec_single";
  if (whole !== "printed_rc" || piece.kind !== "capacitor") return whole;
  return (piece.value ?? 0) >= FILM_FROM_FARADS ? "paper_wax" : whole;
}
