import type { Change, Host, Place } from "../hosts/host.js";

/** A cell of the user's that a step would change: it is asked about first. */
export type Overwrite = {
  readonly place: Place;
  readonly row: string;
  readonly head: string;
  readonly was: string;
  readonly will: string;
};

/**
 * What a button will do, ready to be done: its name says so ("Fill 118 rows"), and the user's cells it would change are listed.
 *
 * Nothing has happened yet. Doing it is one step that one undo takes back.
 */
export type Step = {
  readonly name: string;
  readonly changes: readonly Change[];
  readonly overwrites: readonly Overwrite[];
  readonly notes: readonly string[];
};

/** A step that does nothing, with the reason. */
export const nothingToDo = (reason: string): Step => ({ name: reason, changes: [], overwrites: [], notes: [] });

/** True where doing the step would change something. */
export const doesSomething = (step: Step): boolean => step.changes.length > 0;

/**
 * Does a step as one undo.
 *
 * @param overwriteAgreed True once the user has agreed to lose the cells in `overwrites`.
 */
export async function doStep(host: Host, step: Step, overwriteAgreed = false): Promise<void> {
  if (step.overwrites.length > 0 && !overwriteAgreed) {
    throw new Error(`${step.overwrites.length} of your cells would change; ask first`);
  }
  if (doesSomething(step)) await host.write(step.changes, step.name);
}

/** "1 row", "118 rows". */
export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;
