import { expect, test } from "vitest";
import { catalogue } from "../../../src/start/reference/catalogue.js";
import { inChapters } from "../../../src/start/reference/chapters.js";

const functions = await catalogue();

test("each function stands in one chapter, and the one that does the main job comes first", () => {
  const ids = inChapters(functions).flatMap(({ functions }) => functions.map(({ id }) => id));
  expect([...ids].sort()).toEqual(functions.map(({ id }) => id).sort());
  expect(ids[0]).toBe("WHAT_TO_FIT");
});

test("a function of a file that no chapter names is not passed over", () => {
  expect(() => inChapters([{ ...functions[0]!, file: "new.ts", id: "NEW" }])).toThrow("new.ts, where NEW stands");
});
