import type { Kind, Tolerance } from "../../part.js";
import { attempt } from "../../problem.js";
import type { DecimalMark } from "../../quantity/notation/number.js";
import { unitNamed } from "../../quantity/notation/units.js";
import { readTolerance } from "../../quantity/tolerance.js";
import { withoutAsides } from "./asides.js";
import type { ColumnField } from "./columnWords.js";
import { plainNotation } from "./notation.js";
import { readFigures } from "./readFigures.js";
import type { FieldCell, RowTexts } from "./rowTexts.js";
import { SILENT, type Stated, type StatedHints } from "./stated.js";

/** The column of a kind's value, and the unit of its bare numbers where the head gives none. */
const VALUE_FIELD: Readonly<Partial<Record<Kind, ColumnField>>> = {
  resistor: "resistance",
  potentiometer: "resistance",
  thermistor: "resistance",
  capacitor: "capacitance",
  inductor: "inductance",
};

/** What the columns of a row state of a part of this kind: each cell says what its column's head announces. */
export function columnStated(texts: RowTexts, kind: Kind, hints: StatedHints, mark: DecimalMark): Stated {
  const read = (cells: readonly FieldCell[], bare: string) =>
    readFigures(cells.map((cell) => withUnit(cell, bare, mark)).join(" "), kind, hints);
  const field = VALUE_FIELD[kind];
  const valueCells = [...(field ? texts.of(field) : []), ...texts.of("value")];
  const valueUnit = texts.first("value unit") ?? "";
  const volts = texts.of("volts").map((cell) => withUnit({ ...cell, text: withVolts(cell.text) }, "V", mark));
  const alternating = texts.of("volts ac").map((cell) => withUnit(cell, "VAC", mark));
  const rated = [...valueCells.map((cell) => withUnit(cell, valueUnit, mark)), ...volts, ...alternating].join(" ");
  const stated = readFigures(rated, kind, hints);
  const watts = read(texts.of("watts"), "W").watts;
  const tolerance = toleranceCell(texts.first("tolerance"), stated.value, mark) ?? stated.tolerance;
  return { ...SILENT, ...stated, watts: watts ?? stated.watts, tolerance };
}

/** A cell in plain notation; a bare number in it gets the unit of its column's head, else the usual one. */
function withUnit({ column, text }: FieldCell, usual: string, mark: DecimalMark): string {
  const plain = withoutAsides(plainNotation(text, mark), false).trim();
  const unit = column.unit && unitNamed(column.unit) ? column.unit : usual;
  return unit === ""
    ? plain
    : plain.replace(/(^|[\s,;/+-])(\d*\.?\d+)(?=$|[\s,;/+-])(?!\s*[a-zµΩ%])/gi, `$1$2 ${unit}`);
}

/** "275 AC" in a column of volts is 275 VAC. */
const withVolts = (text: string): string => text.replace(/^(\d[\d.,]*)\s*(ac|dc|a\.c\.|d\.c\.)$/i, "$1 V$2");

/** The tolerance of its own column: percent where no sign stands, a letter, or an amount of the value's unit. */
function toleranceCell(text: string | null, value: number | null, mark: DecimalMark): Tolerance | null {
  if (text === null) return null;
  const plain = plainNotation(text, mark).replace(/^0\s?%\s*[,/]?\s*\+/, "-0%/+");
  return attempt(() =>
    readTolerance(/^[\d./]+$/.test(plain) ? `${plain}%` : plain, value === null ? {} : { nominal: value }),
  );
}
