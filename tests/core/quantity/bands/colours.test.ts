import { expect, test } from "vitest";
import { readColours } from "../../../../src/core/index.js";

test.each([
  ["yellow violet orange gold", ["yellow", "violet", "orange", "gold"]],
  ["Yellow, Purple, Orange, Gold", ["yellow", "violet", "orange", "gold"]],
  ["brown-gray-red", ["brown", "grey", "red"]],
  ["YE VT OG GD", ["yellow", "violet", "orange", "gold"]],
  ["yel vio org gld", ["yellow", "violet", "orange", "gold"]], // common practice
  ["red red orange black - yellow", ["red", "red", "orange", "black", "none", "yellow"]],
  ["brown black red no band", ["brown", "black", "red", "none"]],
  ["brown/black/red/no colour", ["brown", "black", "red", "none"]],
])("%s are %j", (text, colours) => expect(readColours(text)).toEqual(colours));

test("a word that is no colour of the code is named, with those that are", () => {
  expect(() => readColours("yellow mauve orange")).toThrow('"mauve" is not known. Colours are black, brown');
});
