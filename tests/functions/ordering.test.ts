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
  ['LUG.PACK_COST(7, "0.3; 10+ 0.2") -> 2', "7 x 0.30 is 2.10, ten at 0.20 are 2.00"],
  ["LUG.PACK_COST(7, {1, 0.3; 10, 0.2}) -> 2", "the same breaks as two columns"],
  ['LUG.PACK_COST({3; ; 11}, {0.3; 0.3; "1.5"}, {1; 1; 5}) -> {0.9; ""; 4.5}', "down a column, each row its own price"],
  ["LUG.PACK_COST(3, 0.3, 1, 1, 1, 2) -> #N/A", "two in stock are not three"],
  ['LUG.PACK_COST(3, "cheap") -> #VALUE!', "no price"],
  ["LUG.ORDER_QTY(9, 5, 10%) -> 2", "9.9 pieces are ten, two packs of five"],
  ['LUG.ORDER_QTY(9, 1, , "0.3; 10+ 0.27") -> 10', "nine at 0.30 cost 2.70, as do ten at 0.27"],
  ["LUG.ORDER_QTY(9, 1, , , 1, 4, 2) -> 8", "two on hand, in fours"],
  ["LUG.ORDER_QTY(9, 1, , , , , 20) -> 0", "enough on hand"],
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
