import { beforeAll, beforeEach, describe, expect, test } from "vitest";
import { type FunctionListing, registerCellFunctions, standInForExcel } from "../../src/hosts/cellFunctions.js";
import { Model } from "../../src/hosts/library.js";

const matrix = (name: string) => ({ name, dimensionality: "matrix" as const });
const listing: FunctionListing = {
  functions: [
    { id: "DOUBLE", parameters: [matrix("values")] },
    { id: "SHAPE", parameters: [matrix("values")] },
    { id: "GIVEN", parameters: [{ name: "single" }, { name: "left", optional: true }] },
    { id: "COUNTED", parameters: [{ name: "first" }, { ...matrix("more"), repeating: true }] },
    { id: "REFUSE", parameters: [{ name: "value" }] },
    { id: "SOME_REFUSED", parameters: [] },
    { id: "BROKEN", parameters: [] },
  ],
};

describe("cell functions in the embedded sheet", () => {
  let model: Model;
  const at = (name: string) => ({ sheetId: "Sheet1", col: name.charCodeAt(0) - 65, row: Number(name.slice(1)) - 1 });
  const type = (name: string, content: string) => model.dispatch("UPDATE_CELL", { ...at(name), content });
  const shown = (name: string) => model.getters.getEvaluatedCell(at(name));

  beforeAll(() => {
    standInForExcel();
    const { Error: CellError, ErrorCode, associate } = CustomFunctions;
    const refused = (text: string) => new CellError(ErrorCode.notAvailable, text);
    associate("DOUBLE", (values: number[][]) => values.map((row) => row.map((value) => value * 2)));
    associate("SHAPE", (values: unknown[][]) => `${values.length} by ${values[0]!.length}`);
    associate("GIVEN", (...given: unknown[]) => JSON.stringify(given));
    associate("COUNTED", (_first: unknown, more: unknown[]) => JSON.stringify(more));
    associate("REFUSE", (value: string) => {
      throw refused(`No part is called ${value}.`);
    });
    associate("SOME_REFUSED", () => [[1, refused("not this one")]]);
    associate("BROKEN", () => {
      throw new Error("a mistake of ours");
    });
    expect(registerCellFunctions(listing, "LUG")).toEqual([]);
  });

  beforeEach(() => {
    model = new Model();
  });

  test("a range arrives row by row and its answer spills in the same shape", () => {
    type("A1", "1");
    type("B1", "2");
    type("C1", "3");
    type("A3", "=LUG.DOUBLE(A1:C1)");
    type("A5", "=LUG.SHAPE(A1:C2)");
    expect(["A3", "B3", "C3"].map((name) => shown(name).value)).toEqual([2, 4, 6]);
    expect(shown("A5").value).toBe("2 by 3");
  });

  test("a single cell is a range of one, and the answer can be calculated with", () => {
    type("A1", "21");
    type("A2", "=lug.double(A1)+0");
    expect(shown("A2").value).toBe(42);
  });

  test("what is left out and what is empty arrive as null, as in Excel", () => {
    type("A1", "=LUG.GIVEN(B7)");
    expect(shown("A1").value).toBe("[null,null]");
  });

  test("a repeating parameter arrives as one list of ranges", () => {
    type("A1", "=LUG.COUNTED(1,2,3)");
    expect(shown("A1").value).toBe("[[[2]],[[3]]]");
  });

  test("an error shows its kind in the cell and its sentence beside it", () => {
    type("A1", '=LUG.REFUSE("R7")');
    expect(shown("A1")).toMatchObject({ type: "error", value: "#N/A", message: "No part is called R7." });
  });

  test("an error among other answers stands in its own cell", () => {
    type("A1", "=LUG.SOME_REFUSED()");
    expect(shown("A1").value).toBe(1);
    expect(shown("B1")).toMatchObject({ type: "error", value: "#N/A", message: "not this one" });
  });

  test("an error in an argument is handed on, not hidden", () => {
    type("A1", "=1/0");
    type("A2", "=LUG.GIVEN(A1)");
    expect(shown("A2")).toMatchObject({ type: "error", value: "#DIV/0!" });
  });

  test("a mistake of ours says so without naming anybody else's help desk", () => {
    type("A1", "=LUG.BROKEN()");
    expect(shown("A1").type).toBe("error");
    expect(shown("A1").message).toContain("This function failed.");
  });

  test("a listed function that nobody brought is reported", () => {
    expect(registerCellFunctions({ functions: [{ id: "ABSENT", parameters: [] }] }, "LUG")).toEqual(["ABSENT"]);
  });
});
