import type { Form } from "./forms.js";

/**
 * What a form comes to, in numbers that the outermost join adds: ohms for a series, siemens for a parallel.
 *
 * `numbers` are those of its parts. A search asks this of every network that comes near, so nothing is made on the way.
 *
 * @example wholeOf([[0, 1], 2], [100, 100, 50]) // 100
 */
export function wholeOf(form: Form, numbers: readonly number[], adds = true): number {
  let sum = 0;
  for (const one of form) {
    const own = typeof one === "number" ? numbers[one]! : wholeOf(one, numbers, !adds);
    sum += adds ? own : 1 / own;
  }
  return adds ? sum : 1 / sum;
}

/** Shares by the part's number: of what the outermost join adds up (volts of a series), and of what it hands through. */
export type Borne = { readonly added: number[]; readonly through: number[] };

/** What each part bears of the whole; written into `borne`. Their products are the shares of the power. */
export function bear(form: Form, numbers: readonly number[], borne: Borne): void {
  share(form, numbers, borne, 1, 1, true);
}

function share(
  form: Form,
  numbers: readonly number[],
  into: Borne,
  added: number,
  through: number,
  adds: boolean,
): void {
  const whole = wholeOf(form, numbers, adds);
  for (const one of form) {
    const own = typeof one === "number" ? numbers[one]! : wholeOf(one, numbers, !adds);
    const ownAdded = adds ? (added * own) / whole : added;
    const ownThrough = adds ? through : (through * whole) / own;
    if (typeof one !== "number") share(one, numbers, into, ownAdded, ownThrough, !adds);
    else {
      into.added[one] = ownAdded;
      into.through[one] = ownThrough;
    }
  }
}
