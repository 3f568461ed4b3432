import { beforeAll, describe, expect, test } from "vitest";
import { type CellFunction, catalogue } from "../../src/start/reference/catalogue.js";
import { readExample } from "../../src/start/reference/example.js";
import { provideCustomFunctions } from "./customFunctions.js";
import { loadFunctions } from "./loadFunctions.js";

const functions = await catalogue();
const byId = functions.map((one) => [one.id, one] as const);

const UNITS =
  /\b(ohms?|farads?|henries|volts?|watts?|amperes?|milliamperes?|microamperes?|seconds?|hertz|metres?|pieces?|joules|ratio|percent|kelvin|degrees|VA|no unit)\b/;

/** Names of the sheet's own that ours would collide with, or that look like cells. */
const LOOKS_LIKE_A_CELL = /^[A-Z]{1,3}\d+$|^R\d*C\d*$/;
const BUILT_IN = ["TREND", "DELTA", "TYPE", "VALUE", "CODE", "TEXT", "INDEX", "PRICE", "BASE", "CONVERT", "NEGATE"];

let call: Awaited<ReturnType<typeof loadFunctions>>;
beforeAll(async () => {
  provideCustomFunctions();
  call = await loadFunctions(functions);
});

test("each name stands once, over all files", () => {
  expect(new Set(functions.map(({ id }) => id)).size).toBe(functions.length);
  expect(functions.length).toBeGreaterThan(5);
});

describe.each(byId)("%s", (id, one: CellFunction) => {
  test("has the name of its export in capitals, so that files and formulas can be found from each other", () => {
    expect(id).toBe(one.exported.replace(/[A-Z]/g, (capital) => `_${capital}`).toUpperCase());
  });

  test("has a name that no cell and no function of the sheet has", () => {
    expect(id).toMatch(/^[A-Z][A-Z0-9_]{2,}$/);
    expect(id).not.toMatch(LOOKS_LIKE_A_CELL);
    expect(BUILT_IN).not.toContain(id);
  });

  test("says what it gives in one sentence, with units, and what each argument is", () => {
    expect(one.description).toMatch(UNITS);
    expect(one.description).toMatch(/^[A-Z].*\.$/);
    for (const { name, description } of one.parameters) expect(description, name).toMatch(/\w{3,}.*\.$/);
  });

  test("asks for what it needs before what may be left out", () => {
    const optional = one.parameters.map((parameter) => parameter.optional);
    expect(optional).toEqual([...optional].sort());
  });

  test("has a help link to its own place in the reference", () => {
    expect(one.helpUrl).toBe(`reference.html#${id}`);
  });

  test(`gives what its example says: ${one.example}`, () => {
    const { id: called, given, gives } = readExample(one.example);
    expect(called).toBe(id);
    expect(given.length).toBeLessThanOrEqual(one.parameters.length);
    const found = call.get(id)!(...given);
    expect(found.map((row) => row.map(rounded))).toEqual(gives.map((row) => row.map(rounded)));
  });
});

describe("a choice that a function offers", () => {
  const choices = functions.flatMap((one) =>
    one.parameters.flatMap(({ name, choices }, place) =>
      choices.map((choice) => [one.id, name, choice, place, one] as const),
    ),
  );

  test.each(choices)("%s, %s: %s is one that it knows", (id, _name, choice, place, one) => {
    const { given } = readExample(one.example);
    const args = one.parameters.map((_, i) => (i === place ? [[choice]] : (given[i] ?? null)));
    const said = () =>
      JSON.stringify(call.get(id)!(...args)?.map((row) => row.map((cell) => (cell as Error)?.message)));
    expect(messageOf(said)).not.toContain("is not known");
  });

  function messageOf(work: () => string): string {
    try {
      return work();
    } catch (error) {
      return (error as Error).message;
    }
  }
});

/** Numbers to nine figures, as a cell shows them; an error as its name. */
function rounded(cell: unknown): unknown {
  if (typeof cell === "number") return Number(cell.toPrecision(9));
  if (cell === null) return "";
  return typeof cell === "object" ? (cell as { code: string }).code : cell;
}
