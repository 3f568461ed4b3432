import { beforeAll, expect, test } from "vitest";
import { openBook, valuesOf } from "../../src/commands/book.js";
import { sparesOf, wantsOf } from "../../src/commands/orderBook.js";
import { keepSparesStep } from "../../src/commands/spares.js";
import { doStep } from "../../src/commands/step.js";
import { registerFromSources } from "../../src/start/cellFunctions.js";
import { bench, FILM, typeInto } from "./aBench.js";

beforeAll(async () => {
  await registerFromSources();
});

test("spares by kind are kept in Settings, and every order asks for them from then on", async () => {
  const { host } = await bench({ Near: `N1,${FILM},0.60\n` });
  await typeInto(host, "parts", 3, "perSet", 8);
  const kept = { resistor: 0.1, capacitor: 0.25, other: 0 };
  await doStep(host, keepSparesStep(await openBook(host), kept));
  const book = await openBook(host);
  expect(valuesOf(book.settings).find(({ key }) => key === "spares_capacitor_pct")?.setting).toBe("25");
  expect(sparesOf(book)).toEqual(kept);
  // eight and a quarter more
  expect(wantsOf(book).lines.map(({ pieces }) => pieces)).toEqual([10]);
});
