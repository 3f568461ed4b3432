import type { Fact } from "../fact.js";
import { type Kind, kindNamed, type Part } from "../part.js";
import { readTolerance, writeTolerance } from "../quantity/tolerance.js";
import type { Rule } from "../rule.js";
import { readDetails, writeDetails } from "./details.js";
import { factOf, type Origin, readFrom, writeFrom } from "./from.js";
import { emptyRow, headsOf } from "./sheet.js";
import { PARTS_SHEET, type PartsRow } from "./sheets/parts.js";
import { readValueOrSpan, writeValueOrSpan } from "./spanText.js";
import { idOfLabel, labelOf } from "./typeNames.js";
import { readWarnings, writeWarnings } from "./warningWords.js";

const { columns } = PARTS_SHEET;

/**
 * A part as a row of Parts: what the list says, and in `from` how we know each figure.
 *
 * @param short The short name of its set.
 * @param rules The rules whose labels name types and uses.
 */
export function rowOfPart(part: Part, short: string, rules: readonly Rule[]): PartsRow {
  const row: PartsRow = {
    ...emptyRow(PARTS_SHEET),
    id: part.id,
    ...partKey(part, short),
    printed: part.printed,
    kind: part.kind,
    value: writeValueOrSpan(part.value?.value ?? null, part.span, part.kind),
    size: part.value?.value ?? part.span?.max ?? null,
    tolerance: part.tolerance && writeTolerance(part.tolerance.value),
    watts: part.watts?.value ?? null,
    volts: part.volts?.value ?? null,
    type: labelOf(rules, "class", part.className.value),
    usedAs: part.role && labelOf(rules, "role", part.role.value),
    more: writeDetails(part) || null,
    perSet: part.quantity,
    unsure: writeWarnings(part.warnings) || null,
  };
  return { ...row, from: writeFrom(originsOf(part, row)) || null };
}

/** What a part is known by over two readings of one list. */
export type PartKey = Pick<PartsRow, "project" | "document" | "section" | "designator" | "parent">;

/** What a part is known by, in the cells of its row. @param short The short name of its set. */
export const partKey = (part: Part, short: string): PartKey => ({
  project: short,
  document: part.document,
  section: part.section,
  designator: part.designator,
  parent: part.parent && [part.parent, part.suffix].filter(Boolean).join(" "),
});

function originsOf(part: Part, row: PartsRow): Origin[] {
  const detail = part.dielectric ?? part.construction ?? part.temperatureCoefficient;
  const facts: readonly [keyof PartsRow & keyof typeof columns, Fact<unknown> | null][] = [
    ["value", part.value],
    ["tolerance", part.tolerance],
    ["watts", part.watts],
    ["volts", part.volts],
    ["type", part.className],
    ["usedAs", part.role],
    ["more", detail],
  ];
  return facts.flatMap(([key, found]) =>
    found && row[key] !== null
      ? [
          {
            head: columns[key].head,
            text: String(row[key]),
            from: found.from,
            at: found.at,
            ...(found.sure ? { sure: found.sure } : {}),
          },
        ]
      : [],
  );
}

/**
 * The part that a row of Parts tells of. What the user typed over is a Fact from the user.
 *
 * @throws PartsError "unreadable" where a figure can't be read; the problem's place is the column's head.
 */
export function partOfRow(row: PartsRow, rules: readonly Rule[]): Part {
  const origins = new Map(readFrom(row.from, headsOf(PARTS_SHEET)).map((origin) => [origin.head, origin]));
  const kind: Kind = kindNamed(row.kind);
  const known = <T>(key: keyof typeof columns, value: T | null): Fact<T> | null =>
    value === null ? null : factOf(value, String(row[key] ?? ""), origins.get(columns[key].head));
  const { value, span } = readValueOrSpan(row.value, kind);
  const [parent = null, ...mark] = row.parent?.split(" ") ?? [];
  return {
    id: row.id ?? "",
    document: row.document ?? "",
    section: row.section,
    designator: row.designator ?? "",
    parent,
    suffix: mark.join(" ") || null,
    kind,
    printed: row.printed ?? "",
    value: known("value", value),
    span,
    tolerance: known("tolerance", row.tolerance === null ? null : readTolerance(row.tolerance)),
    watts: known("watts", row.watts),
    volts: known("volts", row.volts),
    ...readDetails(row.more, kind, origins.get(columns.more.head)),
    quantity: row.perSet ?? 1,
    className: known("type", idOfLabel(rules, "class", row.type)) ?? { value: "unknown", from: "default", at: "" },
    role: known("usedAs", idOfLabel(rules, "role", row.usedAs)),
    warnings: readWarnings(row.unsure),
  };
}
