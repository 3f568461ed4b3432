/** A cylinder's size. */
export type BodySize = { readonly lengthMetres: number; readonly diameterMetres: number };

/** Whether a body fits a room, and what is left over on each side (below zero: what is missing). */
export type Fit = {
  readonly fits: boolean;
  readonly lengthLeftMetres: number;
  readonly diameterLeftMetres: number;
};

/**
 * Whether a body goes into the room there is, for instance into an old shell.
 *
 * @param clearMetres Left free all round, for sleeving, wax or heat; 0 unless given.
 * @example bodyFits({ lengthMetres: 0.019, diameterMetres: 0.008 }, { lengthMetres: 0.038, diameterMetres: 0.012 }).fits // true
 */
export function bodyFits(body: BodySize, room: BodySize, clearMetres = 0): Fit {
  const lengthLeftMetres = room.lengthMetres - body.lengthMetres - 2 * clearMetres;
  const diameterLeftMetres = room.diameterMetres - body.diameterMetres - 2 * clearMetres;
  return { fits: lengthLeftMetres >= 0 && diameterLeftMetres >= 0, lengthLeftMetres, diameterLeftMetres };
}
