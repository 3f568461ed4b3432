import type { Kind, Warning } from "../../part.js";
import type { DecimalMark } from "../../quantity/notation/number.js";
import { withoutAsides } from "./asides.js";
import { codeIn, type StatedCode, withoutCodes } from "./codes.js";
import { columnStated } from "./columnStated.js";
import { kindOfRow, technologyOf } from "./kindOf.js";
import { merged } from "./merge.js";
import { plainNotation } from "./notation.js";
import { readFigures } from "./readFigures.js";
import type { RowTexts } from "./rowTexts.js";
import { coefficientIn, ratedVolts, safetyIn } from "./safety.js";
import type { Stated, StatedHints } from "./stated.js";

/** What the list as a whole says: its decimal mark, what a bare M means, and the kind a heading above the row names. */
export type ListHints = {
  readonly mark: DecimalMark;
  readonly capitalM: "thousand" | "million" | null;
  readonly headingKind: Kind | null;
};

/** The part that a row describes; base units, null where the row is silent. */
export type DescribedPart = Omit<Stated, "volts"> & {
  readonly kind: Kind;
  readonly technology: readonly string[];
  readonly volts: number | null;
  readonly voltsKind: "ac" | "dc" | null;
  readonly safetyClass: string | null;
  readonly temperatureCoefficient: string | null;
};

/**
 * The part that a row describes, from its columns and its description together.
 *
 * @param description The row's free text without count and pack.
 */
export function describedPart(description: string, texts: RowTexts, list: ListHints): DescribedPart {
  const plain = plainNotation(description, list.mark);
  const code = codeIn(plain);
  const printedClass =
    safetyIn(texts.joined("safety class")) ?? safetyIn(`${description}; ${texts.joined("kind", "technology")}`);
  const evidence = { texts, codeKind: code?.kind ?? null, safetyClass: printedClass, headingKind: list.headingKind };
  const kind = kindOfRow({ ...evidence, description: plain });
  const built = `${texts.joined("technology", "body", "kind")}; ${description}`;
  const technology = [...new Set([...technologyOf(built, kind), ...(code?.technology ?? [])])];
  const hints: StatedHints = { technology, capitalM: list.capitalM };
  const described = readFigures(withoutAsides(withoutCodes(plain), kind === "potentiometer"), kind, hints);
  const stated = merged(columnStated(texts, kind, hints, list.mark), code ? withCode(described, code) : described);
  const safetyClass = kind === "capacitor" ? printedClass : null;
  const { volts, kind: voltsKind } = ratedVolts(stated.volts, safetyClass);
  const coefficient = coefficientIn(texts.joined("temperature coefficient")) ?? coefficientIn(description);
  const temperatureCoefficient = kind === "capacitor" ? coefficient : null;
  const warnings = unique(stated.warnings);
  return { ...stated, kind, technology, volts, voltsKind, safetyClass, temperatureCoefficient, warnings };
}

/** Words say more than codes where both speak; a code's value needs no second statement. */
function withCode(words: Stated, { stated }: StatedCode): Stated {
  return merged(
    { ...stated, volts: words.volts },
    { ...words, value: words.value === stated.value ? words.value : null },
  );
}

const unique = (warnings: readonly Warning[]) =>
  warnings.filter((warning, i) => warnings.findIndex((other) => other.text === warning.text) === i);
