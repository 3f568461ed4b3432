import { describe, expect, test } from "vitest";
import { factOf, type Origin, readFrom, writeFrom } from "../../../src/core/index.js";

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
