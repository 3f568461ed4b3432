import { JSDOM } from "jsdom";
import { describe, expect, test } from "vitest";
import { catalogue } from "../../../src/start/reference/catalogue.js";
import { referencePage } from "../../../src/start/reference/referencePage.js";

const functions = await catalogue();
const document = new new JSDOM("").window.DOMParser().parseFromString(referencePage(functions), "text/html");

describe("the reference of cell functions", () => {
  test.each(functions.map(({ id, parameters }) => [id, parameters] as const))(
    "help for %s leads to its place, which names every argument",
    (id, parameters) => {
      const section = document.getElementById(id)!;
      expect(document.querySelectorAll(`nav a[href="#${id}"]`)).toHaveLength(1);
      expect(section.querySelector("h3")?.textContent).toBe(id);
      const terms = [...section.querySelectorAll("dt")].map((term) => term.textContent);
      for (const { name, optional } of parameters) expect(terms).toContain(optional ? `[${name}]` : name);
      expect(section.querySelector("figcaption")?.textContent).toContain(`=LUG.${id}(`);
    },
  );

  test("loads nothing and runs nothing", () => {
    expect(document.querySelectorAll("script, link, img")).toHaveLength(0);
  });

  test("shows a spilled answer as cells", () => {
    expect(document.querySelectorAll("#STD_VALUES tr")).toHaveLength(4);
  });
});
