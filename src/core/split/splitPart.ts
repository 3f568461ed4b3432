import type { CanSection, InnerPart, ListedPart } from "../part.js";

/**
 * One part of its own: a listed part with one designator; `parent` and `suffix` name the can, network or tapped resistor
 * it was split from and the section, `pins` those between which it lies in a network, `whole` is what it was split from.
 */
export type SplitPart = ListedPart & {
  readonly parent: string | null;
  readonly suffix: string | null;
  readonly pins: string | null;
  readonly whole: ListedPart | null;
};

/**
 * One item of a list as the parts it stands for: one for each designator, and one for each section of a can, each piece of
 * a printed network and each section of a tapped resistor.
 *
 * "R12, R13" is two resistors; an 8+8 can becomes two capacitors, each with its own value and volts, named by the can and
 * the section's letter (or number where no letter is printed); a network becomes its resistors and capacitors, numbered
 * in the order of the list. A printed quantity is shared out: what is over the designators stays with the last one.
 *
 * @example splitPart(part("C8A,B,C")).map((own) => own.designators[0]) // ["C8A", "C8B", "C8C"]
 */
export function splitPart(part: ListedPart): readonly SplitPart[] {
  const names = part.designators.length > 0 ? part.designators : [null];
  const over = Math.max(0, part.quantity - names.length);
  return names.flatMap((name, i) => {
    const quantity = names.length === 1 ? part.quantity : i === names.length - 1 ? 1 + over : 1;
    return piecesOf({ ...part, designators: name === null ? [] : [name], quantity });
  });
}

function piecesOf(part: ListedPart): SplitPart[] {
  if (part.sections) return sectionsOf(part, part.sections);
  const inner = part.inner ?? [];
  const isSplit = inner.length > 0 && (part.kind === "network" || (part.kind === "resistor" && inner.length > 1));
  return isSplit ? innerOf(part, inner) : [{ ...part, parent: null, suffix: null, pins: null, whole: null }];
}

function sectionsOf(whole: ListedPart, sections: readonly CanSection[]): SplitPart[] {
  const can = whole.designators[0] ?? "can";
  return sections.map(({ suffix, farads, volts }, i) => {
    const mark = suffix ?? String(i + 1);
    return {
      ...whole,
      designators: [/^[A-Z]$/.test(mark) ? can + mark : `${can}-${mark}`],
      value: farads,
      volts: volts ?? whole.volts,
      sections: null,
      parent: can,
      suffix,
      pins: null,
      whole,
    };
  });
}

/** Watts and volts printed for the whole are not those of a piece. */
function innerOf(whole: ListedPart, inner: readonly InnerPart[]): SplitPart[] {
  const name = whole.designators[0] ?? whole.kind;
  return inner.map(({ kind, value, pins = null }, i) => ({
    ...whole,
    designators: [`${name}-${i + 1}`],
    kind,
    value,
    watts: null,
    volts: null,
    inner: null,
    parent: name,
    suffix: String(i + 1),
    pins,
    whole,
  }));
}
