import { describe, expect, test } from "vitest";
import { factOf, type Origin, originText, readFrom, writeFrom } from "../../../src/core/index.js";

const HEADS = ["value", "watts", "new watts", "used as", "tolerance", "type"];

describe("the from column", () => {
  test.each<[string, Origin, string]>([
    ["watts 0.5 (note 2)", { head: "watts", text: "0.5", from: "note", at: "note 2" }, "the page note"],
    ["value 470 k (line 14)", { head: "value", text: "470 k", from: "line", at: "line 14" }, "the line"],
    [
      "tolerance ±20 % (rule carbon_comp)",
      { head: "tolerance", text: "±20 %", from: "default", at: "carbon_comp" },
      "a rule",
    ],
    [
      "new watts 1 (rule carbon_comp)",
      { head: "new watts", text: "1", from: "default", at: "carbon_comp" },
      "longer heads first",
    ],
    [
      "type Wax paper (line 3: says paper, likely)",
      { head: "type", text: "Wax paper", from: "line", at: "line 3: says paper", sure: "likely" },
      "how sure we are is a word",
    ],
    [
      "used as Line (mains) bypass (you)",
      { head: "used as", text: "Line (mains) bypass", from: "user", at: "" },
      "brackets in a name",
    ],
  ])("%s reads as written: %s", (cell, origin) => {
    expect(readFrom(cell, HEADS)).toEqual([origin]);
    expect(writeFrom([origin])).toBe(cell);
  });

  test("words of the user's in that cell are passed over", () => {
    expect(readFrom("asked Jim; watts 0.5 (note 2)", HEADS)).toHaveLength(1);
    expect(readFrom(null, HEADS)).toEqual([]);
  });

  test("a cell that differs from what we wrote is the user's", () => {
    const [origin] = readFrom("watts 0.5 (note 2)", HEADS);
    expect(factOf(0.5, "0.5", origin)).toEqual({ value: 0.5, from: "note", at: "note 2" });
    expect(factOf(1, "1", origin).from).toBe("user");
    expect(factOf(1, "1", undefined).from).toBe("user");
  });
});

describe("what an entry keeps of a cell", () => {
  test.each([
    ["470 k", "470 k", "a short text stands as it is"],
    ["reads 612 k; bad", "16 letters", "what would break the entry up is kept as its length and a print"],
    ["a".repeat(300), "300 letters", "so is a long one"],
  ])("%s is kept as %s: %s", (text, kept) => expect(originText(text).startsWith(kept)).toBe(true));

  test("an edit of one letter shows", () => {
    expect(originText("a long reason; with a part")).not.toBe(originText("a long reason; with a part."));
    expect(originText("a long reason; with a part")).not.toBe(originText("a long reason; with a port"));
  });
});
