import { beforeEach, describe, expect, test } from "vitest";
import type { Change, ColumnLook, Host, Place, Written } from "../../../src/hosts/host.js";

/** A host under test, with what only a user can do. */
export type Bench = {
  readonly host: Host;
  /** Types into a cell as a user would. */
  readonly type: (place: Place, text: string) => Promise<void>;
  /** One press of undo. */
  readonly undo: () => Promise<void>;
};

const cells = (cells: Written[][], row = 0, column = 0): Change => ({
  kind: "cells",
  sheet: "Parts",
  row,
  column,
  cells,
});

const column = (look: Partial<ColumnLook>): ColumnLook => ({
  width: 90,
  format: null,
  tint: null,
  group: null,
  folded: false,
  ...look,
});

/** A host may take a moment until it listens. */
const aMoment = () => new Promise((done) => setTimeout(done, 30));

/** What every host must do; commands and pane rest on nothing else. */
export function hostContract(name: string, makeBench: () => Promise<Bench>): void {
  describe(`${name} keeps the contract of hosts`, () => {
    let bench: Bench;
    let host: Host;
    beforeEach(async () => {
      bench = await makeBench();
      host = bench.host;
    });

    const valuesOf = async (sheet = "Parts") =>
      (await host.read(sheet))?.rows.map((row) => row.map((cell) => cell.value));

    test("a sheet that is not there reads as nothing, and writing to it makes it", async () => {
      expect(await host.read("Parts")).toBeNull();
      await host.write([cells([["id", "value"]])], "Write heads");
      expect(await host.sheets()).toContain("Parts");
      expect(await valuesOf()).toEqual([["id", "value"]]);
    });

    test("a sheet that was only made is empty", async () => {
      await host.write([{ kind: "sheet", sheet: "Parts" }], "New sheet");
      expect(await host.read("Parts")).toEqual({ sheet: "Parts", rows: [] });
    });

    test.each<[written: string, why: string]>([
      ["=1+41", "a formula in a list is never run"],
      ["=cmd|'/c calc'!A1", "nor is a call to another program"],
      ["+1", "a leading plus"],
      ["-1", "a leading minus"],
      ["@x", "a leading at"],
      ["0402", "a size code keeps its zero"],
      ["1/2", "half a watt is not the first of February"],
      ["4E3", "not 4000"],
      ["TRUE", "not a truth value"],
      ["5%", "not 0.05"],
      ["'47", "an apostrophe is part of the text"],
      ["10-12", "not a date"],
      ["0.047 µF", "plain text"],
      ["a\nb", "two lines"],
    ])("the text %j stays text: %s", async (written) => {
      await host.write([cells([["printed"], [written]])], "Write");
      const stored = (await host.read("Parts"))!.rows[1]![0]!;
      expect(stored).toEqual({ value: written, formula: null });
    });

    test.each(["=1+41", "0402", "1/2", "'47", "TRUE"])(
      "the text %j stays text in a column of text, whichever comes first",
      async (written) => {
        const look: Change = {
          kind: "look",
          sheet: "Parts",
          columns: [column({ format: "@" })],
          frozenColumns: 0,
          filter: false,
        };
        await host.write([cells([["printed"], [written]])], "Write");
        await host.write([look], "Dress");
        expect(await valuesOf()).toEqual([["printed"], [written]]);
        await host.write([cells([[written]], 2)], "Write more");
        expect(await valuesOf()).toEqual([["printed"], [written], [written]]);
      },
    );

    test("numbers stay numbers and empty cells are never zero", async () => {
      await host.write(
        [
          cells([
            ["a", "b", "c"],
            [0.5, "", true],
          ]),
        ],
        "Write",
      );
      expect(await valuesOf()).toEqual([
        ["a", "b", "c"],
        [0.5, null, true],
      ]);
    });

    test("a number stays a number in a column of text", async () => {
      const look: Change = {
        kind: "look",
        sheet: "Parts",
        columns: [column({ format: "@" })],
        frozenColumns: 0,
        filter: false,
      };
      await host.write([look, cells([["text"], [0.5]])], "Write");
      await host.write([look], "Dress again");
      expect(await valuesOf()).toEqual([["text"], [0.5]]);
    });

    test("a formula is live: it follows the cells that it names", async () => {
      await host.write([cells([[2, { formula: "=A1*21" }]])], "Write");
      expect((await host.read("Parts"))!.rows[0]![1]).toEqual({ value: 42, formula: "=A1*21" });
      await host.write([cells([[3]])], "Change");
      expect((await valuesOf())![0]![1]).toBe(63);
    });

    test("null leaves a cell as it is, an empty text empties it", async () => {
      await host.write([cells([["a", "b", "c"]])], "Write");
      await host.write([cells([[null, "", "d"]])], "Change");
      expect(await valuesOf()).toEqual([["a", null, "d"]]);
    });

    test("one write is one undo, whatever it holds", async () => {
      await host.write([cells([["kept"]])], "First");
      const look: Change = {
        kind: "look",
        sheet: "Parts",
        columns: [column({ tint: "yours" })],
        frozenColumns: 1,
        filter: true,
      };
      await host.write(
        [cells([["a"], ["b"], [{ formula: "=1+1" }]]), look, { kind: "sheet", sheet: "Lines" }],
        "Second",
      );
      await bench.undo();
      expect(await valuesOf()).toEqual([["kept"]]);
      expect(await host.sheets()).not.toContain("Lines");
    });

    test("a sheet grows with what is written", async () => {
      const many = Array.from({ length: 1500 }, (_, i) => [i, `R${i}`]);
      await host.write([cells(many)], "Write");
      const rows = (await host.read("Parts"))!.rows;
      expect(rows.length).toBe(1500);
      expect(rows[1499]!.map((cell) => cell.value)).toEqual([1499, "R1499"]);
    });

    test("what the user types is read back with its formula", async () => {
      await host.write([cells([["a", 2]])], "Write");
      await bench.type({ sheet: "Parts", row: 1, column: 0 }, "=B1+1");
      expect((await host.read("Parts"))!.rows[1]![0]).toEqual({ value: 3, formula: "=B1+1" });
    });

    test("the selection can be moved, and whoever watches hears of it once", async () => {
      await host.write([cells([["a"], ["b"], ["c"]])], "Write");
      const heard: Place[] = [];
      const stop = host.onSelect((place) => heard.push(place));
      await aMoment();
      const place = { sheet: "Parts", row: 2, column: 0 };
      await host.select(place);
      await expect.poll(() => heard).toEqual([place]);
      expect(await host.selection()).toEqual(place);
      stop();
      await aMoment();
      await host.select({ ...place, row: 0 });
      await aMoment();
      expect(heard.length).toBe(1);
    });

    test("whoever watches hears which sheet changed, by command or by hand", async () => {
      await host.write([cells([["a"]])], "Write");
      const heard: string[] = [];
      host.onChange((sheet) => heard.push(sheet));
      await aMoment();
      await bench.type({ sheet: "Parts", row: 0, column: 0 }, "b");
      await expect.poll(() => heard).toContain("Parts");
    });
  });
}
