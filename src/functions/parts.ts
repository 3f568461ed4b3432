import * as core from "../core/index.js";
import { anything, rating, text } from "./ask.js";
import { type Ask, each, spill } from "./cell.js";

/** The rules that a text puts in force; one text that serves a column is read once. The defaults where there is none. */
function inForce(given: unknown): Ask<core.RulesInForce> {
  const { read } = word(given);
  return { given, read: (cell) => core.rulesOfText(read(cell) as string | null) };
}

const word = (given: unknown) => text<null>(given, null);
const listed = (cell: core.Cell) => (typeof cell === "number" ? cell : String(cell));

/** A part taken through the stages by its line, type, use, volts and rules, and what is shown of it. */
function ofStages(
  [part, type, usedAs, volts, rules]: readonly unknown[],
  show: (stages: ReturnType<typeof core.whatToFit>, isDefault: boolean) => core.Cell[][],
): unknown[][] {
  return spill(
    [anything(part), word(type), word(usedAs), rating<null>(volts, "volts", "volt", null), inForce(rules)],
    (cell, type, usedAs, volts, inForce) =>
      show(core.whatToFit({ listed: listed(cell), type, usedAs, volts, inForce }), inForce === core.DEFAULTS_IN_FORCE),
  );
}

/**
 * What to do with a part and what to fit in its place, with its watts and volts; a line that names several parts gives a row for each.
 * @customfunction WHAT_TO_FIT
 * @helpurl reference.html#WHAT_TO_FIT
 * @param part The part's line of a list such as R7 470K 1/2W, or its value.
 * @param type Its type, such as paper_wax; recognised from the line when left out.
 * @param usedAs What it does, such as plate load; recognised from the line when left out.
 * @param volts Volts across it, where known.
 * @param rules The text that RULES_IN_FORCE gives; the default rules when left out.
 * @returns Action, value, tolerance, watts, volts, type of the new part, and the reason.
 * @example LUG.WHAT_TO_FIT("C5 .05 mf 400V paper", "", "avc") -> {"replace", "0.047 µF", "±10 %", "", 630, "Polyester film", "wax paper leaks after these years, whatever it reads in farads, replace; 0.047 µF ±10 % polyester film, 630 V, because 400 V is sold as 630 V, 0.05 µF is sold as 0.047 µF; taken for wax paper tubular, likely; by the default rules, replace the known bad"}
 */
export function whatToFit(
  part: unknown[][],
  type?: unknown[][],
  usedAs?: unknown[][],
  volts?: unknown[][],
  rules?: unknown[][],
): unknown[][] {
  return ofStages([part, type, usedAs, volts, rules], (stages, isDefault) =>
    stages.map((each) => core.fitRow(each, isDefault)),
  );
}

/**
 * Why WHAT_TO_FIT answers as it does (words, no unit): every fact and rule behind it, one a row; down a column the first of each.
 * @customfunction WHY
 * @helpurl reference.html#WHY
 * @param part The part's line of a list, or its value.
 * @param type Its type; recognised from the line when left out.
 * @param usedAs What it does; recognised from the line when left out.
 * @param volts Volts across it, where known.
 * @param rules The text that RULES_IN_FORCE gives; the default rules when left out.
 * @returns Rows of what it is about, what is said, and where that comes from.
 * @example LUG.WHY({"R7 470K 1/2W"; "C5 .05 mf"}) -> {"value", "470 k", "the list, line 1"; "value", "0.05 µF", "the list, line 1"}
 */
export function why(
  part: unknown[][],
  type?: unknown[][],
  usedAs?: unknown[][],
  volts?: unknown[][],
  rules?: unknown[][],
): unknown[][] {
  return ofStages([part, type, usedAs, volts, rules], (stages) =>
    stages.flatMap((each) => core.chainOf(each).map((link) => [...link])),
  );
}

/**
 * What type of part a line of a list is, how sure that is, and what told it (words, no unit).
 * @customfunction PART_TYPE
 * @helpurl reference.html#PART_TYPE
 * @param part The part's line of a list.
 * @param year The year the equipment was made, where known.
 * @returns The type, sure, likely or a guess, and what told it.
 * @example LUG.PART_TYPE("C5 .05 mf 400V", 1948) -> {"Wax paper tubular", "likely", "the list does not say what it is made of: 0.001 to 1 µF is paper up to about 1960"}
 */
export function partType(part: unknown[][], year?: unknown[][]): unknown[][] {
  return spill([text(part), anything<null>(year, null)], (line, year) =>
    core.partsListed(line, null).map((each) => {
      const { id, sure, why } = core.classOf(each, typeof year === "number" ? year : null);
      return [core.labelOf(core.defaultRules(), "class", id), sure, why];
    }),
  );
}

/**
 * The rule that holds for a type in a use (ratios and volts in its columns), column by column, and which row decided each.
 * @customfunction RULE_FOR
 * @helpurl reference.html#RULE_FOR
 * @param type A type such as Wax paper tubular, or its short name paper_wax.
 * @param usedAs A use such as Plate to next grid, or its short name coupling_grid; no special duty when left out.
 * @param rules The text that RULES_IN_FORCE gives; the default rules when left out.
 * @returns Rows of column, what it says, and the row that decided it.
 * @example LUG.RULE_FOR({"paper_wax"; "fuse"}, "line_to_chassis") -> {"action", "replace", "use One side of line to chassis or ground"; "action", "test", "type Fuse"}
 */
export function ruleFor(type: unknown[][], usedAs?: unknown[][], rules?: unknown[][]): unknown[][] {
  return spill([text(type), word(usedAs), inForce(rules)], (type, usedAs, inForce) =>
    core.ruleTable(type, usedAs, inForce).map((row) => [...row]),
  );
}

/**
 * What to watch for with a part of a type in a use (words, no unit), stops first.
 * @customfunction CAUTIONS
 * @helpurl reference.html#CAUTIONS
 * @param type A type such as elec_single.
 * @param usedAs A use such as first_filter; no special duty when left out.
 * @param rules The text that RULES_IN_FORCE gives; the default rules when left out.
 * @returns Rows of level (stop, look, note) and what to watch.
 * @example LUG.CAUTIONS("pot_switch") -> {"stop", "Line-powered part. Follow local wiring rules; have a qualified person check work you are not licensed or trained to do."}
 */
export function cautions(type: unknown[][], usedAs?: unknown[][], rules?: unknown[][]): unknown[][] {
  return spill([text(type), word(usedAs), inForce(rules)], (type, usedAs, inForce) =>
    core.cautionTable(type, usedAs, inForce).map((row) => [...row]),
  );
}

/**
 * What stands in for a figure that a list leaves unsaid of a type: watts, volts, or its tolerance as text.
 * @customfunction UNSTATED
 * @helpurl reference.html#UNSTATED
 * @param type A type such as carbon_comp.
 * @param figure tolerance, watts or volts.
 * @param rules The text that RULES_IN_FORCE gives; the default rules when left out.
 * @returns Watts or volts as a number, a tolerance as text; blank where the rule says nothing.
 * @example LUG.UNSTATED("carbon_comp", "watts") -> 0.5
 */
export function unstated(type: unknown[][], figure: unknown[][], rules?: unknown[][]): unknown[][] {
  return each([text(type), text(figure), inForce(rules)], (type, figure, inForce) =>
    core.unstatedFigure(type, figure, inForce),
  );
}
