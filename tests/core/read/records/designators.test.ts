import fc from "fast-check";
import { expect, test } from "vitest";
import { columnNamesOf, designatorsAt, designatorsOf } from "../../../../src/core/read/records/designators.js";

test.each([
  ["R12", "R12", "one"],
  ["C-10", "C-10", "a hyphen stays as printed"],
  ["C02", "C02", "so does a leading zero"],
  ["C12A/B", "C12A C12B", "sections with a stroke"],
  ["C8A,B,C", "C8A C8B C8C", "letters alone go on"],
  ["C6 ABCD", "C6A C6B C6C C6D", "letters together"],
  ["C3A-B", "C3A C3B", "a range of letters"],
  ["R1 to R4", "R1 R2 R3 R4", "a range in words"],
  ["C-01 THRU C-03", "C-01 C-02 C-03", "a range keeps the zeros"],
  ["R13–R15", "R13 R14 R15", "a dash"],
  ["L1-4", "L1 L2 L3 L4", "the letter left out"],
  ["R18,27,45", "R18 R27 R45", "the letter left out in a list"],
  ["R11,14,D24,25", "R11 R14 D24 D25", "another letter inside"],
  ["R9, 10,11,12", "R9 R10 R11 R12", "blanks here and there"],
  ["R16 & R18", "R16 R18", "and"],
  ["R-9 THRU R-12 (except R-11)", "R-9 R-10 R-12", "an exception"],
  ["A-R193 THRU A-R195", "A-R193 A-R194 A-R195", "a circuit's letter before the name"],
  ["1A2R3, A23A2R14", "1A2R3 A23A2R14", "assemblies in the name"],
  ["Rö1", "Rö1", "a German tube"],
  ["1A1C2,C3", "1A1C2 1A1C3", "an assembly said once"],
  ["R 1, R 2", "R1 R2", "a blank inside"],
  ["Tr 1", "Tr1", "a blank behind two letters"],
  ["C202ABCD", "C202A C202B C202C C202D", "the letters of a can at once"],
  ["R-4-1", "R-4-1", "the first of several R-4"],
  ["R-2-1, R-2-2", "R-2-1 R-2-2", "two of them"],
  ["R-4-1,2", "R-4-1 R-4-2", "two of them, the second in short"],
  ["R-4-7", "R-4 R-5 R-6 R-7", "a range with hyphens"],
  ["C-1-A,B,C", "C-1A C-1B C-1C", "letters of a can behind a hyphen"],
  ["R.1.", "R.1", "a point behind the letter"],
  ["2-C2 to 2-C4", "2-C2 2-C3 2-C4", "a unit's number before the name"],
])("%s is %s: %s", (text, names) => {
  expect(designatorsOf(text)).toEqual(names.split(" "));
});

test.each(["12AX7", "470K", "6-32", "RESISTORS", "1/2 W", "", "R", "R1 470K", "C301A,B 65-0820", "V1 ECC83", "NO.1"])(
  "%s is no designator",
  (text) => {
    expect(designatorsOf(text)).toBeNull();
  },
);

test.each<[string, string[] | null, string]>([
  ["1R1, 1R2", ["1R1", "1R2"], "a number of the unit before the name"],
  ["1R1 thru 1R3", ["1R1", "1R2", "1R3"], "and before both ends of a range"],
  ["Dr", ["Dr"], "letters of a German list"],
  ["LS-A", ["LS-A"], "letters with a suffix"],
  ["C104-1", ["C104-1"], "a section's number behind"],
  ["Tube", null, "a word"],
  ["NOTE", null, "a word in capitals that heads remarks"],
])("in a column of names %s is %j: %s", (text, names, _why) => expect(columnNamesOf(text)).toEqual(names));

test("designators stop where the value begins", () => {
  expect(designatorsAt("R1, R5, R7 470K")).toEqual({ names: ["R1", "R5", "R7"], end: 10 });
  expect(designatorsAt("R19, 20, 21 1K")!.names).toEqual(["R19", "R20", "R21"]);
  expect(designatorsAt("R5, 33 k")!.names).toEqual(["R5"]);
  expect(designatorsAt("R5, 10,000 ohms")!.names).toEqual(["R5"]);
  expect(designatorsAt("L4, 15 H")!.names).toEqual(["L4"]);
  expect(designatorsAt("C15, C16, 3 off")!.names).toEqual(["C15", "C16"]);
});

test("a range of any length is written out one by one", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 1, max: 400 }), (from, more) => {
      const names = designatorsOf(`R${from} THRU R${from + more}`)!;
      expect(names).toHaveLength(more + 1);
      expect(names.at(-1)).toBe(`R${from + more}`);
    }),
  );
});
