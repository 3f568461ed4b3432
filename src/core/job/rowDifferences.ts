import { type Disagreement, disagreements } from "../crosswalk/disagreements.js";
import type { Kind, ListedPart } from "../part.js";
import { readOtherList, type Saying, writeOtherList } from "../present/otherList.js";
import type { PartsRow } from "../present/sheets/parts.js";
import { writeValueOrSpan } from "../present/spanText.js";
import { writeTolerance } from "../quantity/tolerance.js";
import { listedOfRow } from "./listedOfRow.js";

/** A field of which two rows of one part say different things, each as text; `safer` where one can stand more. */
export type RowDifference = {
  readonly field: string;
  readonly one: string;
  readonly other: string;
  readonly safer: "one" | "other" | null;
};

const SAFER = { factory: "one", service: "other" } as const;
/** The ends of a range, its value and its tolerance are each said once. */
const FIELD: Readonly<Record<string, string>> = { valueMin: "value", valueMax: "value", toleranceMinus: "tolerance" };

/** Every field that two rows of one part state differently. @example rowDifferences(one, other)[0] // { field: "watts", one: "1 W", other: "2 W", safer: "other" } */
export function rowDifferences(one: PartsRow, other: PartsRow): readonly RowDifference[] {
  const [a, b] = [listedOfRow(one), listedOfRow(other)];
  const found = disagreements(a, b).map(({ field, safer }: Disagreement) => ({
    field: FIELD[field] ?? field,
    safer: safer && SAFER[safer],
  }));
  const fields = found.filter(({ field }, at) => found.findIndex((each) => each.field === field) === at);
  return fields.map(({ field, safer }) => ({ field, one: textOf(a, field), other: textOf(b, field), safer }));
}

/** What a list states of a field, with its unit; empty where it states nothing. */
function textOf(part: ListedPart, field: string): string {
  if (field === "watts") return part.watts === null ? "" : `${part.watts} W`;
  if (field === "volts") return part.volts === null ? "" : `${part.volts} V`;
  if (field === "tolerance") return part.tolerance ? writeTolerance(part.tolerance) : "";
  if (field === "value") return valueText(part, part.kind);
  return String(part[field as "taper" | "dielectric" | "construction"] ?? "");
}

const valueText = ({ value, valueMin, valueMax }: ListedPart, kind: Kind) =>
  writeValueOrSpan(value, valueMin === null || valueMax === null ? null : { min: valueMin, max: valueMax }, kind) ?? "";

/** A difference as a sentence, the safer rating first. @example "watts 2 W in service folder (the safer), 1 W in factory list" */
export function differenceText(
  { field, one, other, safer }: RowDifference,
  rows: readonly [PartsRow, PartsRow],
): string {
  const said = [`${one} in ${rows[0].document}`, `${other} in ${rows[1].document}`];
  if (safer === null) return `${field} ${said.join(", ")}`;
  const [first, second] = safer === "one" ? said : [...said].reverse();
  return `${field} ${first} (the safer), ${second}`;
}

/** Ratings that the other list states and this one leaves unsaid. */
function saidAlone(row: PartsRow, other: PartsRow): readonly Saying[] {
  const [own, theirs] = [listedOfRow(row), listedOfRow(other)];
  return (["watts", "volts"] as const)
    .filter((field) => own[field] === null && theirs[field] !== null)
    .map((field) => ({ field, text: textOf(theirs, field), leftAside: false }));
}

/**
 * What the same part's rows in other lists say that this row does not, as its cell; what the user left aside stays so.
 *
 * @returns "" where they say the same.
 */
export function otherListCell(row: PartsRow, others: readonly PartsRow[]): string {
  const before = readOtherList(row.otherList);
  const wasAside = (id: string, { field, text }: Saying) =>
    before.some(
      (old) => old.id === id && old.says.some((each) => each.field === field && each.text === text && each.leftAside),
    );
  return writeOtherList(
    others.map((other) => {
      const id = other.id ?? "";
      const differing = rowDifferences(row, other).map(({ field, other: text }) => ({ field, text, leftAside: false }));
      const says = [...differing, ...saidAlone(row, other)];
      return { id, says: says.map((saying) => ({ ...saying, leftAside: wasAside(id, saying) })) };
    }),
  );
}
