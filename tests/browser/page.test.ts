import { afterAll, describe, expect, test } from "vitest";
import { closeBrowser, visit } from "./visit.js";

afterAll(closeBrowser);

describe("the page", () => {
  test("opens with nothing asked from elsewhere and nothing amiss", async () => {
    const { errors, strangers, picture, close } = await visit();
    await picture("page-1280-light");
    expect(strangers).toEqual([]);
    expect(errors).toEqual([]);
    await close();
  });

  test("works out one of our functions typed into a cell", async () => {
    const { typeInCell, cellText, picture, close } = await visit();
    await typeInCell("B2", '=LUG.NEAREST_STD(52000,"E12")');
    await picture("formula");
    expect(await cellText("B2")).toBe("56000");
    await close();
  });
});
