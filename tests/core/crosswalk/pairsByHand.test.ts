import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { type Crosswalk, crosswalk } from "../../../src/core/crosswalk/crosswalk.js";
import type { ListedPart } from "../../../src/core/part.js";
import { readList } from "../../../src/core/read/readList.js";
import { readSource } from "../../../src/sources/readSource.js";

const FIXTURES = path.join(import.meta.dirname, "fixtures");
/** From this confidence on a pair is offered as settled. */
const SURE = 0.8;

const partsOf = async (file: string): Promise<readonly ListedPart[]> =>
  readList((await readSource(file, readFileSync(path.join(FIXTURES, file)))).lines).parts;

const nameOf = ({ designators }: ListedPart) => designators[0]!.replace("-", "");

/** Pairs written by hand beside the invented lists: which part is which, and in what the two lists differ. */
const pairsByHand = (name: string) =>
  readFileSync(path.join(FIXTURES, `${name}.pairs.csv`), "utf8")
    .trim()
    .split("\n")
    .slice(1)
    .map((line) => line.split(","))
    .map(([factory, service, disagree]) => ({ factory, service, disagree: disagree!.split(";").filter(Boolean) }));

describe.each([
  [
    "console",
    "console.factory.txt",
    "console.service.txt",
    "of the 1930s, M for thousand, plain numbers against hundreds",
  ],
  ["recorder", "recorder.factory.tsv", "recorder.service.txt", "of the 1950s, a table by sheets against plain numbers"],
])("the lists of a %s", (name, factory, service, _form) => {
  const byHand = pairsByHand(name);
  const walk = async (): Promise<Crosswalk> => crosswalk(await partsOf(factory), await partsOf(service));
  const truthOf = (pair: Crosswalk["pairs"][number]) => byHand.find((each) => each.factory === nameOf(pair.factory));

  test("no sure pair is wrong, and nine in ten are sure", async () => {
    const sure = (await walk()).pairs.filter(({ confidence }) => confidence >= SURE);
    expect(sure.map((pair) => [nameOf(pair.factory), nameOf(pair.service)])).toEqual(
      sure.map((pair) => [nameOf(pair.factory), truthOf(pair)?.service]),
    );
    const real = byHand.filter((each) => each.factory !== "" && each.service !== "");
    expect(sure.length).toBeGreaterThanOrEqual(0.9 * real.length);
  });

  test("what the two lists say differently of a part is named, and nothing else", async () => {
    for (const pair of (await walk()).pairs)
      expect([nameOf(pair.factory), pair.disagree.map(({ field }) => field)]).toEqual([
        nameOf(pair.factory),
        truthOf(pair)?.disagree,
      ]);
  });

  test("a part that stands in one list alone is paired with none", async () => {
    const { onlyFactory, onlyService } = await walk();
    const alone = byHand.filter((each) => each.factory === "" || each.service === "");
    expect([...onlyFactory, ...onlyService].map(nameOf)).toEqual(
      expect.arrayContaining(alone.map((each) => each.factory || each.service)),
    );
  });
});
