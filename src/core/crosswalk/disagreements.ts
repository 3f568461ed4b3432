import type { ListedPart } from "../part.js";
import { isSameMake } from "./makes.js";

/** A field of which two documents say different things; `safer` is the document whose rating can stand more, if one can. */
export type Disagreement = {
  readonly field: string;
  readonly factory: unknown;
  readonly service: unknown;
  readonly safer: "factory" | "service" | null;
};

const NUMBERS = ["value", "valueMin", "valueMax", "watts", "volts"] as const;
const WORDS = ["dielectric", "construction", "taper"] as const;
const RATINGS: ReadonlySet<string> = new Set(["watts", "volts"]);

/** Numbers printed in two ways (1/3 W, .33 W) are the same within this ratio. */
const SAME = 0.015;

/** Whether two numbers are the same to the care of a parts list. */
export const closeNumber = (a: number, b: number) => Math.abs(a - b) <= SAME * Math.max(Math.abs(a), Math.abs(b));

/** Every field that both documents state and state differently. */
export function disagreements(factory: ListedPart, service: ListedPart): Disagreement[] {
  const found: Disagreement[] = [];
  for (const field of NUMBERS) {
    const [a, b] = [factory[field], service[field]];
    if (a === null || b === null || closeNumber(a, b)) continue;
    found.push({ field, factory: a, service: b, safer: RATINGS.has(field) ? (a > b ? "factory" : "service") : null });
  }
  for (const field of WORDS) {
    const [a, b] = [factory[field], service[field]];
    if (a !== null && b !== null && !isSameMake(a, b)) found.push({ field, factory: a, service: b, safer: null });
  }
  return [...found, ...toleranceDisagrees(factory, service), ...sectionsDisagree(factory, service)];
}

function toleranceDisagrees({ tolerance: a }: ListedPart, { tolerance: b }: ListedPart): Disagreement[] {
  if (!a || !b || (closeNumber(a.minus, b.minus) && closeNumber(a.plus, b.plus))) return [];
  const size = (tolerance: typeof a) => tolerance.minus + tolerance.plus;
  return [{ field: "toleranceMinus", factory: a, service: b, safer: size(a) < size(b) ? "factory" : "service" }];
}

function sectionsDisagree({ sections: a }: ListedPart, { sections: b }: ListedPart): Disagreement[] {
  if (!a || !b) return [];
  const text = (sections: typeof a) =>
    sections
      .map((section) => `${section.farads}/${section.volts}`)
      .sort()
      .join();
  return text(a) === text(b) ? [] : [{ field: "sections", factory: a, service: b, safer: null }];
}
