import { beforeAll, expect, test } from "vitest";
import { catalogue } from "../../src/start/reference/catalogue.js";
import { readExample } from "../../src/start/reference/example.js";
import { provideCustomFunctions } from "./customFunctions.js";
import { loadFunctions } from "./loadFunctions.js";

let call: Awaited<ReturnType<typeof loadFunctions>>;
beforeAll(async () => {
  provideCustomFunctions();
  call = await loadFunctions(await catalogue());
});

const plain = (cell: unknown) => {
  if (typeof cell === "number") return Number(cell.toPrecision(6));
  return typeof cell === "object" && cell !== null ? (cell as { code: string }).code : (cell ?? "");
};

const OFFERS =
  '{"vendor", "stock number", "kind", "value", "watts", "technology", "prices"; ' +
  '"Corwen", "1", "resistor", "470 k", 1, "metal-film", "0.12"; ' +
  '"Corwen", "2", "resistor", "470 k", 0.25, "carbon-film", "0.02"; ' +
  '"Astle", "3", "resistor", "510 k", 2, "metal-oxide", "0.3"}';

test.each([
  // formula with its answer, why
  [
    `LUG.WHO_SELLS("470 k", ${OFFERS}, 0.5) -> {"Corwen", "1", "470 k", "", 1, "", 0.12, ""}`,
    "the quarter watt is too small",
  ],
  [`LUG.WHO_SELLS("470 k", ${OFFERS}, , , , 10%, 3) -> {"Astle", "3", "510 k", "", 2, "", 0.3, ""}`, "the third best"],
  [
    `LUG.WHO_SELLS("470 k", ${OFFERS}, , , "metal oxide", 10%) -> {"Astle", "3", "510 k", "", 2, "", 0.3, ""}`,
    "of one technology",
  ],
  [`LUG.WHO_SELLS("22 k", ${OFFERS}) -> #N/A`, "nobody sells it"],
  [`LUG.WHO_SELLS(470000, ${OFFERS}) -> #VALUE!`, "no unit and no kind"],
  [`LUG.WHO_SELLS("470 k", ${OFFERS}, , , "unobtainium") -> #VALUE!`, "no such technology"],
  ['LUG.WHO_SELLS("470 k", {"maker", "price"; "x", 1}) -> #N/A', "a table without the heads"],
])("%s: %s", (example) => {
  const { id, given, gives } = readExample(example);
  expect(answerOf(id, given)).toEqual(gives.map((row) => row.map(plain)));
});

/** What a call gives; an error that a single cell would show, by its name. */
function answerOf(id: string, given: unknown[]): unknown[][] {
  try {
    return call.get(id)!(...given).map((row) => row.map(plain));
  } catch (error) {
    return [[(error as { code: string }).code]];
  }
}
