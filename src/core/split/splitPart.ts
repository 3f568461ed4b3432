import type { ListedPart } from "../part.js";

/** One part of its own: a listed part with one designator; `parent` and `suffix` name the can and the section it was split from. */
export type SplitPart = ListedPart & { readonly parent: string | null; readonly suffix: string | null };

/**
 * One item of a list as the parts it stands for: one for each designator, and one for each section of a can.
 *
 * "R12, R13" is two resistors; an 8+8 can becomes two capacitors, each with its own value and volts, named by the can and
 * the section's letter (or number where no letter is printed). A printed quantity is shared out: what is over the
 * designators stays with the last one.
 *
 * @example splitPart(part("C8A,B,C")).map((own) => own.designators[0]) // ["C8A", "C8B", "C8C"]
 */
export function splitPart(part: ListedPart): readonly SplitPart[] {
  const names = part.designators.length > 0 ? part.designators : [null];
  const over = Math.max(0, part.quantity - names.length);
  return names.flatMap((name, i) => {
    const quantity = names.length === 1 ? part.quantity : i === names.length - 1 ? 1 + over : 1;
    return sectionsOf({ ...part, designators: name === null ? [] : [name], quantity, parent: null, suffix: null });
  });
}

function sectionsOf(part: SplitPart): SplitPart[] {
  const can = part.designators[0] ?? "can";
  if (!part.sections) return [part];
  return part.sections.map(({ suffix, farads, volts }, i) => {
    const mark = suffix ?? String(i + 1);
    return {
      ...part,
      designators: [/^[A-Z]$/.test(mark) ? can + mark : `${can}-${mark}`],
      value: farads,
      volts: volts ?? part.volts,
      sections: null,
      parent: can,
      suffix,
    };
  });
}
