import type { ListedField, ListedPart } from "../../part.js";

/** A designator without hyphens, blanks and leading zeros, for comparing: C-01 is C1. */
export const plainName = (name: string) =>
  name
    .toUpperCase()
    .replace(/[\s\-_.]/g, "")
    .replace(/([A-Z])0+(?=\d)/g, "$1");

/** Parts by section and name; a name is looked for in its own section first, then in all. */
export function finder(parts: readonly ListedPart[]): (name: string, section: string | null) => ListedPart | undefined {
  const index = new Map<string, ListedPart>();
  for (const part of parts)
    for (const name of part.designators) {
      const keys = [`${part.section}/${plainName(name)}`, `*/${plainName(name)}`];
      for (const key of keys) if (!index.has(key)) index.set(key, part);
    }
  return (name, section) => index.get(`${section}/${plainName(name)}`) ?? index.get(`*/${plainName(name)}`);
}

const FIELDS: readonly ListedField[] = [
  "tolerance",
  "watts",
  "volts",
  "construction",
  "dielectric",
  "temperatureCoefficient",
];
const DEEPEST = 8;

/** The part with all that the part it is the same as states and its own line does not ("same as C12 except 600 V"). */
export function withReference(part: ListedPart, find: ReturnType<typeof finder>, depth = 0): ListedPart {
  const found = part.sameAs ? find(part.sameAs, part.section) : undefined;
  if (!found || found === part || depth > DEEPEST) return part;
  const source = withReference(found, find, depth + 1);
  const taken = FIELDS.filter(
    (field) => part[field as keyof ListedPart] === null && source[field as keyof ListedPart] !== null,
  );
  const hasOwn = part.value !== null || part.valueMin !== null || part.sections !== null;
  const { value, valueState, valueMin, valueMax, sections, inner, taper, kind } = source;
  const fields = Object.fromEntries(taken.map((field) => [field, source[field as keyof ListedPart]]));
  const at = `same as ${part.sameAs}`;
  const from = Object.fromEntries(
    [...taken, ...(hasOwn ? [] : ["value"])].map((field) => [field, { by: "reference" as const, at }]),
  );
  const values = hasOwn ? {} : { value, valueState, valueMin, valueMax, sections, inner };
  const warnings = hasOwn
    ? part.warnings
    : [...part.warnings, ...source.warnings.filter((w) => w.code !== "duplicate-designator" && w.code !== "conflict")];
  return { ...part, ...fields, ...values, kind, taper: part.taper ?? taper, from: { ...part.from, ...from }, warnings };
}

/** A network that lists its pieces by designator takes their values as its inner parts. */
export function withPieces(part: ListedPart, parts: readonly ListedPart[]): ListedPart {
  if (part.kind !== "network" || part.inner) return part;
  const names = part.designators.map(plainName);
  const pieces = parts.filter(
    (other) => other.partOf && names.includes(plainName(other.partOf)) && other.value !== null,
  );
  if (pieces.length < 2) return part;
  return { ...part, inner: pieces.map(({ kind, value }) => ({ kind, value })), valueState: "stated" };
}
