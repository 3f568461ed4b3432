import { beforeAll, describe, expect, test } from "vitest";
import { openBook, rulesOf, valuesOf } from "../../src/commands/book.js";
import { bringInListStep } from "../../src/commands/bringInList.js";
import { driftOf, driftStep } from "../../src/commands/drift.js";
import { pastePreview } from "../../src/commands/pasteReadings.js";
import { leadsBackStep, logReadingsStep, type Taken, tellsOf } from "../../src/commands/readings.js";
import { doStep } from "../../src/commands/step.js";
import { kindNamed, readReadings } from "../../src/core/index.js";
import { embeddedWorkbook } from "../../src/hosts/embedded.js";
import { Model } from "../../src/hosts/library.js";
import { registerFromSources } from "../../src/start/cellFunctions.js";
import { LIST, TARGET } from "./aList.js";

beforeAll(async () => {
  await registerFromSources();
});

/** A workbook with R1 (100 k) of Power, R1 (470 k) and C1 (0.047 µF) of Sound; all ±20 %. */
async function bench() {
  const { host } = embeddedWorkbook(new Model());
  await doStep(host, bringInListStep(await openBook(host), LIST, TARGET));
  return { host };
}

async function rowsOf(host: Awaited<ReturnType<typeof bench>>["host"]) {
  const book = await openBook(host);
  return { book, rows: book.parts!.rows };
}

const taken = (row: Taken["row"], text: string, inPlace: Taken["inPlace"]): Taken => ({
  row,
  readings: readReadings(text, row.values.value, kindNamed(row.values.kind)),
  inPlace,
  accuracy: 0.01,
  remark: null,
});

describe("readings pasted in one go", () => {
  test("say what each comes to, go into the log and into Parts in one step, and list lifted leads", async () => {
    const { host } = await bench();
    const { book, rows } = await rowsOf(host);
    const defaults = { section: "Sound", inOrder: [], inPlace: "in place", accuracy: 0.01 } as const;
    const lines = pastePreview("R1 612\nC1 0.05 lifted\nR9 12k\nPower\nR1 open", rows, defaults, rulesOf(book, "HL"));
    expect(lines.map(({ became }) => became)).toEqual(["reading", "reading", "not understood", "section", "reading"]);
    // 612 k is above 564 k by more than 1 %, so even in place it convicts; open convicts a resistor, too.
    expect(lines.map(({ told }) => told && [told.verdict, told.action])).toEqual([
      ["bad", "replace"],
      ["good", "replace"],
      null,
      null,
      ["bad", "replace"],
    ]);
    const step = logReadingsStep(
      book,
      lines.flatMap((line) => line.taken ?? []),
      "2026-11-25 10:00",
    );
    expect(step.name).toBe("Log 3 readings");
    expect(step.notes).toEqual([
      "Now to be bought: R1 Sound, R1 Power.",
      "C1 Sound: a lead is lifted until you say it is back.",
    ]);
    await doStep(host, step);
    const after = await rowsOf(host);
    expect(after.rows.map(({ values }) => [values.reading, values.inPlace, values.verdict, values.lifted])).toEqual([
      ["open", "in place", "bad", null],
      ["612 k", "in place", "bad", null],
      ["0.05 µF", "lifted", "good", true],
    ]);
    expect(valuesOf(after.book.readings).map(({ id, reading }) => [id, reading])).toEqual([
      ["HL-2", "612 k"],
      ["HL-3", "0.05 µF"],
      ["HL-1", "open"],
    ]);
    await doStep(host, leadsBackStep(after.book, [after.rows[2]!]));
    expect((await rowsOf(host)).rows[2]!.values.lifted).toBeNull();
  });
});

describe("a part that is read again", () => {
  test("keeps its capacitance beside a leakage taken the same way, and drops it for one taken in place", async () => {
    const { host } = await bench();
    const first = await rowsOf(host);
    await doStep(host, logReadingsStep(first.book, [taken(first.rows[2]!, "0.05", "lifted")], "now"));
    const second = await rowsOf(host);
    const inForce = rulesOf(second.book, "HL");
    expect(tellsOf(taken(second.rows[2]!, "3 µA", "lifted"), inForce).reading).toBe("0.05 µF; 3 µA");
    expect(tellsOf(taken(second.rows[2]!, "3 µA", "in place"), inForce).reading).toBe("3 µA");
  });

  test("is judged by the new reading alone, and not by our own verdict of the last one", async () => {
    const { host } = await bench();
    const first = await rowsOf(host);
    await doStep(host, logReadingsStep(first.book, [taken(first.rows[1]!, "612", "lifted")], "now"));
    const second = await rowsOf(host);
    expect(second.rows[1]!.values.verdict).toBe("bad");
    const told = tellsOf(taken(second.rows[1]!, "480", "lifted"), rulesOf(second.book, "HL"));
    expect([told.verdict, told.action]).toEqual(["good", "keep"]);
  });
});

describe("the drift of what was read", () => {
  test("is counted by value, watts and section, and written over the counts before", async () => {
    const { host } = await bench();
    const first = await rowsOf(host);
    const readings = [taken(first.rows[0]!, "90", "in place"), taken(first.rows[1]!, "612", "in place")];
    await doStep(host, logReadingsStep(first.book, readings, "now"));
    const { book } = await rowsOf(host);
    const byValue = driftOf(book, "HL").filter(({ by }) => by === "value");
    // 90 k on 100 k is -10 %, inside; 612 k on 470 k is +30.2 %, beyond 20 %.
    expect(byValue.map(({ group, read, beyond }) => [group, read, beyond])).toEqual([
      ["100 k", 1, 0],
      ["470 k", 1, 1],
    ]);
    expect(byValue[1]!.middle).toBeCloseTo(612 / 470 - 1, 9);
    await doStep(host, driftStep(book));
    const written = await rowsOf(host);
    expect(valuesOf(written.book.drift).map(({ by, group }) => `${by} ${group}`)).toEqual([
      "value 100 k",
      "value 470 k",
      "watts 0.5 W",
      "section Power",
      "section Sound",
    ]);
    await doStep(host, driftStep(written.book));
    expect(valuesOf((await rowsOf(host)).book.drift)).toHaveLength(5);
  });
});
