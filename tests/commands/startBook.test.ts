import { beforeAll, describe, expect, test } from "vitest";
import { openBook } from "../../src/commands/book.js";
import { missingSheets } from "../../src/commands/startBook.js";
import { DERATING_POLICIES } from "../../src/core/index.js";
import { embeddedWorkbook } from "../../src/hosts/embedded.js";
import { Model } from "../../src/hosts/library.js";
import { registerFromSources } from "../../src/start/cellFunctions.js";

beforeAll(async () => void (await registerFromSources()));

describe("derating policies in a new workbook", () => {
  const started = async () => {
    const { host } = embeddedWorkbook(new Model());
    await host.write(missingSheets(await openBook(host)), "Start");
    const derated = async () => {
      const formula = '=LUG.DERATE(0.35, "NAVSEA SD-18", , "film resistor", 100, , , Derating!A1:G200)';
      await host.write([{ kind: "cells", sheet: "Try", row: 0, column: 0, cells: [[{ formula }]] }], "Try");
      return (await host.read("Try"))!.rows[0]!.map(({ value }) => value);
    };
    return { host, derated };
  };

  test("stand in the sheet Derating, a row each with its source, and DERATE reads them there", async () => {
    const { host, derated } = await started();
    const { rows } = (await host.read("Derating"))!;
    expect(rows.slice(1).map((row) => [row[0]!.value, row[1]!.value, row[6]!.value])).toEqual(
      DERATING_POLICIES.map(({ policy, part, source }) => [policy, part, source]),
    );
    // Worked: 0.35 W at a share of 0.55, with (155 - 100) / (155 - 70) of the watts left at 100 degrees.
    const [rung, least] = await derated();
    expect(rung).toBe(1);
    expect(least).toBeCloseTo(0.35 / 0.55 / (55 / 85), 9);
  });

  test("say what the user wrote over them: another share, another knee and zero", async () => {
    const { host, derated } = await started();
    const { rows } = (await host.read("Derating"))!;
    const row = rows.findIndex(([policy, part, of]) => `${policy!.value} ${part!.value} ${of!.value}` === FILM);
    await host.write([{ kind: "cells", sheet: "Derating", row, column: 3, cells: [[0.25, 50, 150]] }], "Edit");
    expect((await derated())[1]).toBeCloseTo(0.35 / 0.25 / 0.5, 9);
  });
});

const FILM = "NAVSEA SD-18 film resistor watts";
