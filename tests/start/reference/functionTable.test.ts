import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { expect, test } from "vitest";
import { catalogue } from "../../../src/start/reference/catalogue.js";
import { withFunctionTables } from "../../../src/start/reference/functionTable.js";

const README = path.resolve(import.meta.dirname, "../../../README.md");

test("the README's tables of functions are what the comments say (UPDATE=1 writes it anew)", async () => {
  const text = readFileSync(README, "utf8");
  const fresh = withFunctionTables(text, await catalogue());
  if (process.env.UPDATE) writeFileSync(README, fresh);
  else expect(text).toBe(fresh);
});

test("a text without the two marks is refused", () => {
  expect(() => withFunctionTables("no marks", [])).toThrow("<!-- functions -->");
});
