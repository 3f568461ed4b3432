import { beforeAll, describe, expect, test } from "vitest";
import { catalogue } from "../../src/start/reference/catalogue.js";
import { readExample } from "../../src/start/reference/example.js";
import { provideCustomFunctions } from "./customFunctions.js";
import { loadFunctions } from "./loadFunctions.js";

const functions = await catalogue();
let call: Awaited<ReturnType<typeof loadFunctions>>;
beforeAll(async () => {
  provideCustomFunctions();
  call = await loadFunctions(functions);
});

/** What people leave in cells, and what other cells hand on. */
const ODD: readonly [cell: unknown, what: string][] = [
  [null, "nothing"],
  ["", "an empty text"],
  ["   ", "blanks"],
  [0, "nought"],
  [-1, "a negative number"],
  [1e300, "a number beyond all parts"],
  [1e-300, "a number below all parts"],
  [2.5, "half a thing"],
  ["abc", "a word"],
  ["47 k W %", "units that do not go together"],
  ["-", "a dash"],
  [true, "a truth value"],
  ["=1+1", "a formula as text"],
  ["(((", "brackets"],
];

/** Takes the example's arguments and puts something else in one place. */
function answerTo(id: string, place: number, instead: unknown): unknown[][] {
  const one = functions.find((each) => each.id === id)!;
  const { given } = readExample(one.example);
  const args = one.parameters.map((_, i) => (i === place ? instead : (given[i] ?? null)));
  try {
    return call.get(id)!(...args);
  } catch (error) {
    return [[error]];
  }
}

/** A cell that a host can show: a finite number, text, a truth value, or an error that says why. */
function faultOf(cell: unknown): string | null {
  if (typeof cell === "number") return Number.isFinite(cell) ? null : `the number ${cell}`;
  if (typeof cell === "string") return /undefined|NaN|\[object|Infinity/.test(cell) ? `the text ${cell}` : null;
  if (typeof cell === "boolean" || cell === null) return null;
  const { code, message } = (cell ?? {}) as { code?: string; message?: string };
  const isShown = code === "#VALUE!" || code === "#N/A";
  return isShown && (message ?? "").length > 10 && !/undefined|NaN|\[object/.test(message!)
    ? null
    : `${code}: ${message ?? String(cell)}`;
}

const places = functions.flatMap(({ id, parameters }) =>
  parameters.map(({ name }, place) => [id, name, place] as const),
);

describe("whatever stands in an argument, the answer can be shown or says why not", () => {
  test.each(places)("%s, %s", (id, _name, place) => {
    const faults = ODD.flatMap(([cell, what]) =>
      answerTo(id, place, [[cell]])
        .flat()
        .map(faultOf)
        .filter((fault) => fault !== null)
        .map((fault) => `${what}: ${fault}`),
    );
    expect(faults).toEqual([]);
  });

  test.each(places)(
    "%s, %s: a column of all of them, a row, a table, and an error from another cell",
    (id, _name, place) => {
      const column = ODD.map(([cell]) => [cell]);
      const row = [ODD.map(([cell]) => cell)];
      const error = new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable, "an error from elsewhere");
      const found = [
        column,
        row,
        [...column.slice(0, 2), ...column.slice(0, 2)].map((cells) => [...cells, 1]),
        [[error]],
        [[]],
        [],
      ];
      const faults = found.flatMap((instead) => answerTo(id, place, instead).flat().map(faultOf)).filter(Boolean);
      expect(faults).toEqual([]);
    },
  );

  test.each(places)("%s, %s: rows of the answer are equally long", (id, _name, place) => {
    const widths = new Set(
      answerTo(
        id,
        place,
        ODD.map(([cell]) => [cell]),
      ).map((row) => row.length),
    );
    expect(widths.size).toBe(1);
  });
});
