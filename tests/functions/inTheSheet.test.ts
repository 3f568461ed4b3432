import { beforeAll, describe, expect, test } from "vitest";
import { embeddedWorkbook } from "../../src/hosts/embedded.js";
import { Model } from "../../src/hosts/library.js";
import { registerFromSources } from "../../src/start/cellFunctions.js";
import { catalogue } from "../../src/start/reference/catalogue.js";
import { readExample } from "../../src/start/reference/example.js";

const functions = await catalogue();

beforeAll(async () => void (await registerFromSources()));

describe("the example of each function, typed into the embedded sheet", () => {
  test.each(functions.map(({ id, example }) => [id, example] as const))("%s: %s", async (_, example) => {
    const { formula, gives } = readExample(example);
    const { host } = embeddedWorkbook(new Model());
    await host.write([{ kind: "cells", sheet: "Try", row: 0, column: 0, cells: [[{ formula }]] }], "Try");
    const { rows } = (await host.read("Try"))!;
    const shown = gives.map((line, row) => line.map((_, column) => plain(rows[row]?.[column]?.value ?? "")));
    expect(shown).toEqual(gives.map((line) => line.map(plain)));
  });
});

/** A number to nine figures, an empty cell as empty text. */
function plain(cell: unknown): unknown {
  return typeof cell === "number" ? Number(cell.toPrecision(9)) : (cell ?? "");
}
