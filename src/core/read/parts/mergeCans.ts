import type { CanSection, ListedPart } from "../../part.js";
import { shared } from "./cans.js";

const SUFFIXED = /^(.*\d)([A-Fa-f])$/;

/** A section of a can on a row of its own (C12A): the can's name and the letter, or null. */
function sectionOf(part: ListedPart): { base: string; suffix: string } | null {
  const match = part.kind === "capacitor" && part.designators.length === 1 ? SUFFIXED.exec(part.designators[0]!) : null;
  return match && part.sections === null && part.quantity <= 1 ? { base: match[1]!, suffix: match[2]! } : null;
}

/** Cans whose sections stand on rows of their own (C12A, C12B ... below C12 or alone) made one part each; their names lose the letter. */
export function mergeCans(parts: readonly ListedPart[]): ListedPart[] {
  const merged: ListedPart[] = [];
  let at = 0;
  while (at < parts.length) {
    const run = runAt(parts, at);
    merged.push(run.length > 1 ? canOf(run) : withoutLetters(parts[at]!));
    at += Math.max(1, run.length);
  }
  return merged;
}

/** The rows of one can that follow each other: an optional row for the can itself, then its sections. */
function runAt(parts: readonly ListedPart[], at: number): ListedPart[] {
  const first = parts[at]!;
  const isHead = first.kind === "capacitor" && first.designators.length === 1 && !sectionOf(first);
  const base = isHead ? first.designators[0]! : sectionOf(first)?.base;
  if (base === undefined) return [first];
  const run = isHead ? [first] : [];
  for (let next = at + run.length; next < parts.length; next++) {
    const section = sectionOf(parts[next]!);
    if (section?.base !== base || parts[next]!.section !== first.section) break;
    run.push(parts[next]!);
  }
  return run.length > (isHead ? 1 : 1) ? run : [first];
}

function canOf(run: readonly ListedPart[]): ListedPart {
  const rows = run.filter((part) => sectionOf(part) !== null);
  const sections = rows.map(
    (part): CanSection => ({ suffix: sectionOf(part)!.suffix, farads: part.value, volts: part.volts }),
  );
  const first = run[0]!;
  const pick = <K extends keyof ListedPart>(field: K) =>
    run.map((part) => part[field]).find((value) => value !== null) ?? first[field];
  return {
    ...first,
    lines: run.flatMap((part) => part.lines),
    printed: run.map((part) => part.printed).join("; "),
    designators: [sectionOf(rows[0]!)!.base],
    value: null,
    valueState: "stated",
    volts: shared(sections.map((section) => section.volts)),
    dielectric: pick("dielectric"),
    tolerance: pick("tolerance"),
    stockNumber: pick("stockNumber"),
    sections,
    quantity: 1,
    warnings: run.flatMap((part) => part.warnings),
  };
}

/** A can named by all its letters in one row (C8A,B,C) is C8. */
function withoutLetters(part: ListedPart): ListedPart {
  if (!part.sections || part.designators.length < 2) return part;
  const bases = new Set(part.designators.map((name) => SUFFIXED.exec(name)?.[1] ?? name));
  return bases.size === 1 ? { ...part, designators: [...bases] } : part;
}
