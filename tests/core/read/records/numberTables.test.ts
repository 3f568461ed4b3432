import { describe, expect, test } from "vitest";
import { partOf, readText } from "../readText.js";

const LIST = `Ref Des|Part No.
R1|88012-14
C1, C2|88120-7`;
const NUMBERS = `Part No.|Value (UF)|Rating
88012-14|4.7K 5%|1/4W
88120-7|.01|200 V`;

describe("a document that explains its part numbers itself", () => {
  test.each([
    [`${LIST}\n\n${NUMBERS}`, "behind the list"],
    [`${NUMBERS}\n\n${LIST}`, "before the list"],
  ])("gives the parts what their numbers stand for (%#: %s)", (text) => {
    expect(partOf(text, "R1", {}, "|")).toMatchObject({
      value: 4700,
      watts: 0.25,
      from: { value: { by: "reference" } },
    });
    expect(partOf(text, "C2", {}, "|")).toMatchObject({ value: 0.01e-6, volts: 200 });
    expect(readText(text, {}, "|").parts).toHaveLength(2);
  });

  test("a second table of things with numbers of their own stays a list of parts", () => {
    const hardware = "Part No.|Name|Qty\n9-1|Knob|4\n9-2|Bracket|2";
    expect(readText(`${LIST}\n\n${hardware}`, {}, "|").parts.filter(({ kind }) => kind === "other")).toHaveLength(2);
  });
});
