import { kindNamed, type ListedPart, NOTHING_LISTED } from "../part.js";
import { readDetails } from "../present/details.js";
import { readFrom } from "../present/from.js";
import { headsOf } from "../present/sheet.js";
import { PARTS_SHEET, type PartsRow } from "../present/sheets/parts.js";
import { readValueOrSpan } from "../present/spanText.js";
import { attempt } from "../problem.js";
import { readTolerance } from "../quantity/tolerance.js";

/**
 * A row of Parts as its list states it: figures that a default filled in are left out, those that the user typed count.
 *
 * @example listedOfRow(row).watts // null where the list says nothing of watts
 */
export function listedOfRow(row: PartsRow): ListedPart {
  const kind = kindNamed(row.kind);
  const origins = new Map(readFrom(row.from, headsOf(PARTS_SHEET)).map((origin) => [origin.head, origin]));
  const stated = <K extends "watts" | "volts" | "tolerance" | "more">(key: K) => {
    const origin = origins.get(PARTS_SHEET.columns[key].head);
    const isDefault = origin?.from === "default" && origin.text === String(row[key] ?? "");
    return isDefault ? null : row[key];
  };
  const { value, span } = attempt(() => readValueOrSpan(row.value, kind)) ?? { value: null, span: null };
  const { construction, dielectric, taper, temperatureCoefficient } = readDetails(stated("more"), kind, undefined);
  const tolerance = stated("tolerance");
  return {
    ...NOTHING_LISTED,
    kind,
    value,
    valueMin: span?.min ?? null,
    valueMax: span?.max ?? null,
    printed: row.printed ?? "",
    section: row.section,
    designators: row.designator === null ? [] : [row.designator],
    watts: stated("watts"),
    volts: stated("volts"),
    tolerance: tolerance === null ? null : attempt(() => readTolerance(tolerance)),
    construction: construction?.value ?? null,
    dielectric: dielectric?.value ?? null,
    temperatureCoefficient: temperatureCoefficient?.value ?? null,
    taper,
    partOf: row.parent?.split(" ")[0] ?? PART_OF.exec(row.printed ?? "")?.[1] ?? null,
    use: row.usedAs,
  };
}

const PART_OF = /\bpart of\s+([A-Z]{1,3}-?\d+)/i;
