/** TABLE: the volts that a resistor's body bears, by technology and watts. */

/**
 * Highest steady volts of a body, by technology and rated watts; null where only sqrt(P R) limits it.
 *
 * Old composition 1/4 to 1 W: generic RC07, RC20, RC32 data; the others from memory, makers differ: use your stock's figures.
 */
export const BODY_VOLTS: Readonly<Record<string, readonly (readonly [watts: number, volts: number | null])[]>> = {
  carbon_comp_old: [
    [0.25, 250],
    [0.5, 350],
    [1, 500],
    [2, 750],
  ],
  carbon_film: [
    [0.125, 150],
    [0.25, 250],
    [0.5, 350],
    [1, 500],
    [2, 500],
  ],
  metal_film: [
    [0.125, 150],
    [0.25, 200],
    [0.5, 250],
    [0.6, 250],
    [1, 350],
    [2, 500],
  ],
  metal_film_large: [
    [0.5, 350],
    [1, 500],
    [2, 500],
    [3, 500],
  ],
  metal_oxide: [
    [1, 350],
    [2, 350],
    [3, 350],
    [5, 500],
  ],
  hv_metal_glaze: [
    [0.25, 1600],
    [0.5, 3500],
    [1, 7000],
  ],
  wirewound: [
    [3, null],
    [5, null],
    [7, null],
    [10, null],
  ],
};

/** Technologies that have no rows of their own, and the one whose bodies they share. */
const SAME_BODY: Readonly<Record<string, string>> = {
  carbon_comp_new: "carbon_comp_old",
  ceramic_comp: "carbon_comp_old",
  metal_clad: "wirewound",
};

/**
 * What a resistor body of a technology commonly bears: that of the largest one listed with no more watts.
 *
 * @returns Volts; null where no limit beyond sqrt(P R) is known.
 * @example usualBodyVolts("metal_film", 1) // 350
 */
export function usualBodyVolts(technology: string, watts: number): number | null {
  const rows = BODY_VOLTS[SAME_BODY[technology] ?? technology];
  return rows?.filter(([rated]) => rated <= watts).at(-1)?.[1] ?? null;
}
