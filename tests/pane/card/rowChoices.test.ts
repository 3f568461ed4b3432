import { expect, test } from "vitest";
import type { PartsRow } from "../../../src/core/index.js";
import { rowChoices } from "../../../src/pane/card/rowChoices.js";

const row = (at: number, values: Partial<PartsRow>) => ({
  at,
  unread: {},
  formulas: {},
  values: { kind: "resistor", section: "Sound", usedAs: null, action: "test", ...values } as PartsRow,
});

test("rows can be taken by value, by section, by open use, and those that wait come first", () => {
  const rows = [
    row(1, { value: "470 k", size: 470e3, action: "ask" }),
    row(2, { value: "1 k", size: 1e3, usedAs: "Cathode" }),
    row(3, { value: "470 k", size: 470e3 }),
    row(4, { kind: "transformer", value: null }),
  ];
  expect(rowChoices(rows).map(({ name, rows: of }) => [name, of.map(({ at }) => at)])).toEqual([
    ["that wait for you to decide", [1]],
    ["whose use is not known", [1, 3]],
    ["resistors of 470 k", [1, 3]],
    ["resistors in Sound", [1, 2, 3]],
  ]);
});
