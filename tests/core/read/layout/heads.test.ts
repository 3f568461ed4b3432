import { expect, test } from "vitest";
import { headsOf } from "../../../../src/core/read/layout/heads.js";

const rolesOf = (...heads: string[]) =>
  headsOf(heads.map((text, i) => ({ text, start: i * 20 })))?.map((head) => head.role);

test.each([
  // heads, roles, why (common practice)
  [
    ["Ref.", "Value", "Purpose", "Part"],
    ["designator", "value", "use", "partNumber"],
    "a last Part is the number to order by",
  ],
  [["Symbol", "Part", "Rating"], ["designator", "description", "rating"], "elsewhere Part names the thing"],
  [
    ["Symbol Number", "Description", "Quantity per unit"],
    ["designator", "description", "quantity"],
    "one known head, and a known word in each of the others",
  ],
  [["REF", "-1 QTY", "-2 QTY", "DESCRIPTION"], ["designator", "quantity", "quantity", "description"], "variants"],
  [["Symbol", "Part"], ["designator", "description"], "nothing else describes it"],
])("the heads %j are %j: %s", (heads, roles) => expect(rolesOf(...heads)).toEqual(roles));
