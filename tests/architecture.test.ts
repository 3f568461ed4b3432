import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, test } from "vitest";

const ROOT = path.resolve(import.meta.dirname, "../src");
const NOUNS = ["fact", "listedAs", "longWork", "offer", "part", "plan", "problem", "ratings", "rule", "table"].map(
  (noun) => `core/${noun}`,
);
const CALCULATIONS = ["core/quantity", "core/circuit", "core/compose", "core/measure"];
const STAGE_DIET = [...NOUNS, ...CALCULATIONS, "core/rules"];

/** Folder (or noun) -> what it may import; its own folder is always allowed. The reason stands in DEVELOPERS.md. */
const MAY_IMPORT: Record<string, readonly string[]> = {
  ...Object.fromEntries(NOUNS.map((noun) => [noun, NOUNS])),
  ...Object.fromEntries(CALCULATIONS.map((folder) => [folder, [...NOUNS, ...CALCULATIONS]])),
  ...Object.fromEntries(
    ["rules", "read", "split", "complete", "decide", "rate", "match", "order", "present", "crosswalk"].map((stage) => [
      `core/${stage}`,
      STAGE_DIET,
    ]),
  ),
  "core/job": ["core"],
  "core/index": ["core"],
  functions: ["core/index"],
  threads: ["core/index"],
  sources: ["core/index", "threads"],
  solver: ["core/index"],
  longLists: ["core/index", "sources", "threads"],
  hosts: ["core/index"],
  commands: ["core/index", "hosts/host", "longLists", "sources", "solver", "threads"],
  pane: ["commands", "core/index", "hosts/host"],
  start: ["core", "functions", "sources", "solver", "longLists", "hosts", "commands", "pane"],
};

const LONGEST = 200;
const LONGEST_TABLE = 300;

const files = readdirSync(ROOT, { recursive: true, encoding: "utf8" })
  .filter((file) => /\.tsx?$/.test(file) && !file.endsWith(".d.ts"))
  .map((file) => file.split(path.sep).join("/"));

/** The files of ours that a file imports, as paths from src without an ending. */
function importsOf(file: string): string[] {
  const text = readFileSync(path.join(ROOT, file), "utf8");
  const found = [...text.matchAll(/(?:from|import\(?|new URL\()\s*"(\.[^"]+?)(?:\.js|\.ts|\.tsx)?"/g)];
  return found.map((match) => path.posix.join(path.posix.dirname(file), match[1]!));
}

const homeOf = (file: string) =>
  Object.keys(MAY_IMPORT)
    .filter((home) => `${file}/`.startsWith(`${home}/`))
    .sort((a, b) => b.length - a.length)[0];

describe("the house", () => {
  test.each(files)("%s imports only what its folder may", (file) => {
    const plain = file.replace(/\.tsx?$/, "");
    const home = homeOf(plain);
    expect(home, "every file stands in a folder that the table knows").toBeDefined();
    const allowed = [home!, ...MAY_IMPORT[home!]!];
    const strangers = importsOf(file).filter((target) => !allowed.some((a) => `${target}/`.startsWith(`${a}/`)));
    expect(strangers).toEqual([]);
  });

  test.each(files)("%s is about one idea: short enough to read", (file) => {
    const text = readFileSync(path.join(ROOT, file), "utf8");
    const isTable = /^\/\*\* TABLE:/m.test(text);
    expect(text.split("\n").length - 1).toBeLessThanOrEqual(isTable ? LONGEST_TABLE : LONGEST);
  });

  test("nothing imports itself by a detour", () => {
    const graph = new Map(files.map((file) => [file.replace(/\.tsx?$/, ""), importsOf(file)]));
    const done = new Set<string>();
    const visit = (file: string, path: readonly string[]): void => {
      if (path.includes(file)) throw new Error(`cycle: ${[...path.slice(path.indexOf(file)), file].join(" -> ")}`);
      if (done.has(file)) return;
      for (const next of graph.get(file) ?? []) visit(next, [...path, file]);
      done.add(file);
    };
    for (const file of graph.keys()) visit(file, []);
    expect(done.size).toBeGreaterThanOrEqual(files.length);
  });

  test.each(files.filter((file) => file.startsWith("core/")))("%s depends on its arguments alone", (file) => {
    const text = readFileSync(path.join(ROOT, file), "utf8");
    expect(text).not.toMatch(/\bDate\.now\b|\bnew Date\b|\bMath\.random\b|\bconsole\./);
    expect(text).not.toMatch(/^let /m);
  });
});
