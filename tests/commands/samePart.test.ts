import { beforeAll, expect, test } from "vitest";
import { openBook } from "../../src/commands/book.js";
import { bringInListStep } from "../../src/commands/bringInList.js";
import { wantsOf } from "../../src/commands/orderBook.js";
import { overviewOf } from "../../src/commands/overview.js";
import { doStep } from "../../src/commands/step.js";
import { embeddedWorkbook } from "../../src/hosts/embedded.js";
import { Model } from "../../src/hosts/library.js";
import { registerFromSources } from "../../src/start/cellFunctions.js";
import { LIST, TARGET } from "./aList.js";

beforeAll(async () => {
  await registerFromSources();
});

test("a part written down as the same as another row's is ordered once", async () => {
  const { host } = embeddedWorkbook(new Model());
  await doStep(host, bringInListStep(await openBook(host), LIST, TARGET));
  const { parts } = await openBook(host);
  const write = (key: "sameAs" | "action", at: number, text: string) =>
    host.write([{ kind: "cells", sheet: "Parts", row: at, column: parts!.places[key]!, cells: [[text]] }], "typed");
  const [one, other] = parts!.rows;
  await write("action", one!.at, "replace");
  await write("action", other!.at, "replace");
  const before = await openBook(host);
  await write("sameAs", other!.at, one!.values.id!);
  const after = await openBook(host);
  const askers = (book: typeof before) => {
    const { demands, notAsked } = wantsOf(book);
    return new Set([...demands.map(({ part }) => part), ...notAsked.map(({ row }) => row.id)]);
  };
  expect(askers(before).size - askers(after).size).toBe(1);
  expect(overviewOf(before).toFind - overviewOf(after).toFind).toBe(1);
});
