import { expect, test } from "vitest";
import { partOf } from "../readText.js";

const LIST = `Symbol|Value|Rating|See note
R1|100K|1/2 W|1
R2|47K|1 W \u2020|
R3|249K (note 2)|1/2 W|
C1|1000 mmf disc|1000 V|3
R4|22K|1/2 W|
R5|100|2 W|See Note B
NOTES|||
1. Tolerance 20%.|||
2. Tolerance 1%, film.|||
3. GMV.|||
Note B. Wire wound.|||
\u2020 wire wound|||`;

test.each<[string, object, string]>([
  // part, what its footnote gives, why (common practice)
  ["R1", { tolerance: { minus: 0.2, plus: 0.2 }, lines: [2, 9] }, "a bare number in a column of notes"],
  ["R2", { construction: "wirewound" }, "a mark"],
  ["R3", { construction: "film", tolerance: { minus: 0.01, plus: 0.01 } }, "a number in words"],
  ["C1", { tolerance: { minus: 0, plus: 1 } }, "a word for a tolerance"],
  ["R5", { construction: "wirewound" }, "a letter"],
  ["R4", { tolerance: null, construction: null }, "it points to none"],
])("%s takes %j from its footnote: %s", (name, expected, _why) =>
  expect(partOf(LIST, name, {}, "|")).toMatchObject(expected),
);

test("each page has its own star, explained at its foot", () => {
  const text = `Symbol|Value|Rating
R1|100K|1/2 W *
* carbon film, 2%|
Symbol|Value|Rating
R2|47K|5 W *
* wire wound, 5%|`;
  expect(partOf(text, "R1", {}, "|")).toMatchObject({ construction: "carbon-film", lines: [2, 3] });
  expect(partOf(text, "R2", {}, "|")).toMatchObject({ construction: "wirewound", lines: [5, 6] });
  expect(partOf(text, "R2", {}, "|").tolerance).toEqual({ minus: 0.05, plus: 0.05 });
});
