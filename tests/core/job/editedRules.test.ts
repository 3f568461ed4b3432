import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  ACTIONS,
  DEFAULTS_IN_FORCE,
  KINDS,
  LADDERS,
  RULES_SHEET,
  type RulesInForce,
  type RulesRow,
  rowOfRule,
  ruleOfRow,
  rulesOfText,
  rulesText,
  stagesOfPart,
  TECHNOLOGIES,
} from "../../../src/core/index.js";
import { anyPart, type Bought, partUnder } from "./anyPart.js";

/** The whole of what is decided of a part, as one text; what cannot be decided is its message. */
function decided(inForce: RulesInForce, bought: Bought): string {
  try {
    const { decision, ratings } = stagesOfPart(partUnder(inForce, bought), inForce);
    return JSON.stringify({ decision, ratings });
  } catch (error) {
    return (error as Error).message;
  }
}

/** What a person can put into a column of Rules: each word it takes, figures in and out of reason, nothing. */
const FIGURE = fc.constantFrom<string | number>("", -0.5, 0, 0.05, 1, 3, 450);
const CELLS: Partial<Record<keyof RulesRow, fc.Arbitrary<string | number>>> = {
  label: fc.constantFrom("Mine", ""),
  off: fc.constantFrom("yes", ""),
  kind: fc.constantFrom("", ...KINDS),
  trade: fc.constantFrom("", ...ACTIONS),
  conservator: fc.constantFrom("", ...ACTIONS),
  overhaul: fc.constantFrom("", ...ACTIONS),
  powerMode: fc.constantFrom("", "step", "exact", "computed", "split"),
  ladder: fc.constantFrom("", ...Object.keys(LADDERS)),
  valueMode: fc.constantFrom("", "nearest", "not_below", "not_above", "compose", "exact", "same", "split", "ask"),
  low: FIGURE,
  high: FIGURE,
  gate: fc.constantFrom("", "contained", "nominal", "none"),
  series: fc.constantFrom("", "E6", "E12", "E24", "E96", "ELEC", "WW"),
  driftLimit: fc.constantFrom<string | number>("", "marked", 0.1, 0.3),
  technologies: fc.constantFrom("", ...TECHNOLOGIES.map(({ id }) => id)),
  leastVolts: fc.constantFrom<string | number>("", 450, "warmup_peak", "twice_working", "film_floor_V"),
  wantVolts: fc.constantFrom<string | number>("", 630, "film_floor_V"),
  unstatedLow: FIGURE,
  unstatedHigh: FIGURE,
  unstatedWatts: FIGURE,
  unstatedVolts: FIGURE,
  keepBecomesTest: fc.constantFrom("yes", ""),
  cautions: fc.constantFrom("", "mains fire", "polarity"),
  because: fc.constantFrom("", "because I say so"),
};
const anyEdit = fc.record({
  at: fc.nat(DEFAULTS_IN_FORCE.rules.length - 1),
  edit: fc
    .constantFrom(...(Object.keys(CELLS) as (keyof RulesRow)[]))
    .chain((column) => CELLS[column]!.map((cell) => ({ column, cell }))),
});

/** The rules with one cell of one row changed, read as the sheet is read. */
function editedRules(at: number, column: keyof RulesRow, cell: string | number): RulesInForce {
  const row = { ...rowOfRule(DEFAULTS_IN_FORCE.rules[at]!), [column]: RULES_SHEET.columns[column].read(cell) };
  return {
    ...DEFAULTS_IN_FORCE,
    rules: DEFAULTS_IN_FORCE.rules.flatMap((rule, i) => (i === at ? (ruleOfRow(row) ?? []) : rule)),
  };
}

describe("an edited rule", () => {
  test("changes no part but those of its type or its use, whatever is put into whichever cell", () => {
    fc.assert(
      fc.property(anyEdit, fc.array(anyPart, { minLength: 8, maxLength: 8 }), ({ at, edit }, parts) => {
        const { scope, id } = DEFAULTS_IN_FORCE.rules[at]!;
        const after = editedRules(at, edit.column, edit.cell);
        const governs = ({ type, use }: Bought) => (scope === "class" ? type : (use ?? "general")) === id;
        for (const part of parts.filter((each) => !governs(each)))
          expect(decided(after, part)).toBe(decided(DEFAULTS_IN_FORCE, part));
      }),
      { numRuns: 200 },
    );
  });

  test("says the same in the text that cell functions take", () => {
    fc.assert(
      fc.property(anyEdit, anyPart, ({ at, edit }, { type, use, stated }) => {
        const { scope, id } = DEFAULTS_IN_FORCE.rules[at]!;
        const after = editedRules(at, edit.column, edit.cell);
        const governed = scope === "class" ? { type: id, use, stated } : { type, use: id, stated };
        expect(decided(rulesOfText(rulesText(after)), governed)).toBe(decided(after, governed));
      }),
      { numRuns: 200 },
    );
  });
});
