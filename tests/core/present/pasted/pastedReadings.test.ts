import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type PartsRow, type PastedLine, pastedReadings, readingsText } from "../../../../src/core/index.js";

const row = (designator: string, section: string, kind: string, value: string) =>
  ({ id: `HL-${section[0]}${designator}`, designator, section, kind, value }) as PartsRow;

/** R1 stands in both sections, R12 and C4 in one each. */
const ROWS = [
  row("R1", "Power", "resistor", "5.6 Ω"),
  row("R12", "Power", "resistor", "470 k"),
  row("C3A", "Power", "capacitor", "100 µF"),
  row("R1", "Sound", "resistor", "47 k"),
  row("C4", "Sound", "capacitor", "0.1 µF"),
  row("T1", "Sound", "transformer", ""),
];
const INTO = { rows: ROWS, section: "Power", inOrder: [0, 1, 2] };
const paste = (text: string, section = "Power") => pastedReadings(text, { ...INTO, section });

/** A line in short: whose it is and what it says. */
function short({ at, said, became, reason }: PastedLine): string {
  if (became !== "reading" || !said || at === null) return reason ? `${became}: ${reason}` : became;
  const meter = said.accuracy === null ? null : `±${said.accuracy * 100} %`;
  const words = [
    ROWS[at]!.section,
    ROWS[at]!.designator,
    readingsText(said.readings),
    said.inPlace,
    meter,
    said.remark,
  ];
  return words.filter(Boolean).join(" | ");
}
const all = (text: string, section?: string) => paste(text, section).map(short);

describe("a line with its designator", () => {
  test.each([
    ["R12\t612K", "Power | R12 | 612K", "two columns from a sheet"],
    ["R12 612k lifted", "Power | R12 | 612k | lifted", "a line as people jot it"],
    ["r-12: 612", "Power | R12 | 612 k", "a bare figure takes the printed unit"],
    ["R 12 = 1.2 meg", "Power | R12 | 1.2 meg", "two words of a designator, two of a value"],
    ["C4 open", "Sound | C4 | open", "of another section, where only one has it"],
    ["R12,612k,out of circuit,±1%", "Power | R12 | 612k | lifted | ±1 %", "commas between, the meter behind"],
    ["C 3 A 98", "Power | C3A | 98 µF", "a section of a can"],
    ["C4 0,11", "Sound | C4 | 0,11 µF", "a decimal comma"],
    ["C4 0.11 µF leak 3 esr 1.5", "Sound | C4 | 0.11 µF; 3 µA; 1.5 Ω", "leakage and ESR by name, in their usual units"],
    ["C4 OL", "Sound | C4 | OL", "an ohmmeter past its end"],
    [
      "R12 612k (in circuit), burnt at one end",
      "Power | R12 | 612k | in place | burnt at one end",
      "other words are kept",
    ],
    ["R1 5.7", "Power | R1 | 5.7 Ω", "the section that holds decides"],
    ["R12 jumps", "Power | R12 | jumps", "unsteady is a reading"],
  ])("%s is %s: %s", (line, expected) => expect(all(line)).toEqual([expected]));

  test.each([
    ["R99 12k", /This set has no R99/, "no such part"],
    ["R12 about half", /Can't read "about half"/, "no figure"],
    ["R12", /Write the reading behind it/, "nothing behind it"],
    ["R12 612k\nremember the fuse", /starts with no designator/, "a line without one among those that have one"],
  ])("%s is not understood, and says why", (text, reason) => {
    const bad = paste(text).filter(({ became }) => became === "not understood");
    expect(bad).toHaveLength(1);
    expect(bad[0]!.reason).toMatch(reason);
  });

  test("a designator of two other sections asks for its section; a line with its name settles it", () => {
    expect(all("R1 47", "Video")).toEqual([
      "not understood: R1 stands in Power and in Sound: write the section on a line above it.",
    ]);
    expect(all("SOUND:\nR1 47\n\nPower\nR1 5")).toEqual([
      "section",
      "Sound | R1 | 47 k",
      "empty",
      "section",
      "Power | R1 | 5 Ω",
    ]);
  });
});

describe("a column of bare figures", () => {
  test("takes the rows in order; an empty line or a dash passes one over; one too many is said", () => {
    expect(all("5.5\n\n98\n12")).toEqual([
      "Power | R1 | 5.5 Ω",
      "empty",
      "Power | C3A | 98 µF",
      "not understood: No part is left for it: write its designator in front.",
    ]);
    expect(all("-\n612 lifted")).toEqual(["empty", "Power | R12 | 612 k | lifted"]);
  });
});

describe("a table with heads", () => {
  test.each([
    ["ref\treading\tlifted\naccuracy", "R12\t612\tyes", "Power | R12 | 612 k | lifted"],
    ["Part\tSection\tMeasured", "R1\tSound\t47.1", "Sound | R1 | 47.1 k"],
    [
      "part\treading\tleakage (mA)\tESR\tmeter accuracy",
      "C3A\t98\t0.4\t1.2\t1.0%",
      "Power | C3A | 98 µF; 0.4 mA; 1.2 Ω | ±1 %",
    ],
    ["part\tvalue", "R12\t612", "Power | R12 | 612 k"],
    ["part\tvalue\tfound\tin place", "R12\t470K\t612K\tno", "Power | R12 | 612K | lifted"],
    ["id;reading;remark", "HL-PR12;612;warm", "Power | R12 | 612 k | warm"],
  ])("below %s", (heads, line, expected) => {
    expect(all(`${heads.split("\n")[0]}\n${line}`).at(-1)).toBe(expected);
  });

  test("says which columns it does not use, and which id it does not know", () => {
    const seen = paste("id\treading\tcolour\nHL-9\t12\tred");
    expect(seen.map(({ reason }) => reason)).toEqual(["Not used: colour", "No part has the id HL-9."]);
  });
});

test("no line is lost, and none gets two meanings, whatever is pasted", () => {
  const piece = fc.constantFrom("R12", "R1", "C4", "612k", "open", "lifted", "±1 %", "Sound", "\t", ",", "?", "12", "");
  const line = fc.array(piece, { maxLength: 5 }).map((words) => words.join(" "));
  fc.assert(
    fc.property(fc.array(line, { minLength: 1, maxLength: 6 }), (lines) => {
      const text = `${lines.join("\n")}\nR12 1k`;
      const seen = paste(text);
      expect(seen.map((each) => each.text)).toEqual(text.split("\n"));
      for (const each of seen) {
        expect(each.became === "reading").toBe(each.said !== null);
        expect(each.became === "not understood").toBe(
          each.said === null && each.reason !== null && each.became !== "heads",
        );
      }
    }),
  );
});
