import type { Kind } from "../../part.js";
import { FIGURE_NAMES, IDEAS, type Idea, type NameRow } from "./figureNames.js";
import type { FigureName, Statement } from "./statement.js";
import { statementsIn } from "./statementsIn.js";

/** Whose figure it is: some words mean another thing on a selenium stack than on a resistor. */
export type OfPart = { readonly kind: Kind; readonly className: string };

/** Words that add nothing to a label. */
const PLAIN = new Set(
  "v i r c p w e a an the of in to at by its part new it is be volts volt amps amp watts watt ohms ohm farads".split(
    " ",
  ),
);

/** Of a free text these are no figures of the part: what its meter or its dial is set to. */
const ASIDE: Idea = "range";

/** Whether a word belongs to any idea by which a figure is told. @example isSaidWord("plate") // true */
export const isSaidWord = (word: string): boolean => Object.values(IDEAS).some((words) => words.has(word));

const holds = (idea: Idea, words: readonly string[]) => words.some((word) => IDEAS[idea].has(word));

/** Whether a label holds no word beyond those of the row. */
const isWhole = ({ ideas }: NameRow, words: readonly string[]) =>
  words.every((word) => PLAIN.has(word) || ideas.some((idea) => IDEAS[idea].has(word)));

/** Whether a statement gives what a row needs of it. */
const GIVES: Readonly<
  Record<NonNullable<NameRow["needs"]>, (statement: Statement, row: NameRow, isLoose: boolean) => boolean>
> = {
  unit: ({ where, measure }) => where === "text" || measure !== null,
  label: ({ where, measure }) => where === "label" && measure !== null,
  text: ({ where }, _row, isLoose) => where === "text" || isLoose,
  alone: ({ where, words }, row) => where === "text" && isWhole(row, words),
};

function fits(row: NameRow, statement: Statement, { kind, className }: OfPart, isLoose: boolean): boolean {
  const { words, measure } = statement;
  if (row.of && !row.of.includes(kind) && !row.of.includes(className)) return false;
  if (row.needs && !GIVES[row.needs](statement, row, isLoose)) return false;
  if (measure !== null && !row.measures.includes(measure)) return false;
  return row.ideas.every((idea) => holds(idea, words));
}

/**
 * The figure that a statement tells of a part, or null where its words and unit name none.
 *
 * A label is taken at its word: all of it has to belong to the figure, or its unit has to be written out (`isLoose`). In
 * a free text a figure without a unit is none, but for a count.
 *
 * @example figureNamed({ words: ["heater"], measure: "ampere", numbers: [0.3], where: "label" }, part) // "amps"
 */
export function figureNamed(statement: Statement, of: OfPart, isLoose = false): FigureName | null {
  if (statement.where === "text" && holds(ASIDE, statement.words)) return null;
  const row = FIGURE_NAMES.find(
    (each) =>
      fits(each, statement, of, isLoose) &&
      (statement.where === "text"
        ? statement.measure !== null || each.measures.length === 0
        : isLoose || isWhole(each, statement.words)),
  );
  return row?.figure ?? null;
}

/** Figures by name, in base units; several numbers where a list or several ends of the part are stated. */
export type SaidFigures = ReadonlyMap<FigureName, readonly number[]>;

/** Whether a part has several of a figure, one for each of its ends: then all that are told count, else the first. */
export const hasSeveral = (figure: FigureName): boolean => figure === "nodeVolts";

/** Readings that are taken at some volts: "62 MΩ at 400 V". */
const AT_VOLTS: readonly FigureName[] = ["insulation", "leakage"];

/**
 * The figures that a free text states of a part: "plate at 180 V, 1 meg grid resistor follows".
 *
 * The first statement of a figure counts; what is not told by words and unit is left out, never guessed.
 *
 * @param of The kind and class of the part, for some words mean another thing on another part.
 * @example saidFigures("15 V on it", { kind: "capacitor", className: "tantalum" }).get("volts") // [15]
 */
export function saidFigures(text: string, of: OfPart): SaidFigures {
  const found = new Map<FigureName, readonly number[]>();
  let before: FigureName | null = null;
  for (const statement of statementsIn(text)) {
    const plain = figureNamed(statement, of);
    const figure: FigureName | null =
      plain === "volts" && before !== null && AT_VOLTS.includes(before) ? "testVolts" : plain;
    before = figure;
    if (figure === null) continue;
    const known = found.get(figure);
    if (!known) found.set(figure, statement.numbers);
    else if (hasSeveral(figure)) found.set(figure, [...known, ...statement.numbers]);
  }
  return found;
}
