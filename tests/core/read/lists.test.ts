import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { expect, test } from "vitest";
import { readList } from "../../../src/core/read/readList.js";
import { readText } from "../../../src/sources/text.js";

/** Lists kept beside the project, when they are there: each is read whole, and no line is lost. */
const FOLDER = path.resolve(import.meta.dirname, "../../../../shared/lists");
const here = existsSync(FOLDER);
const files = here
  ? readdirSync(FOLDER, { recursive: true, encoding: "utf8" }).filter((file) =>
      /(?:list\.\w+|agc\/[^/]+\.tsv)$/.test(file),
    )
  : [];

test.skipIf(here)("no lists beside the project: the reading of whole lists is not tried", () => {});

test.each(files)("%s: every line is accounted for and parts are found", (file) => {
  const text = readFileSync(path.join(FOLDER, file), "utf8")
    .replace(/^\uFEFF/, "")
    .replace(/\r\n/g, "\n");
  const { parts, furniture, unread } = readList(readText(text, file).lines);
  const seen = new Set([...parts.flatMap((part) => part.lines), ...furniture, ...unread.map(({ line }) => line)]);
  expect(text.split("\n").flatMap((line, i) => (line.trim() !== "" && !seen.has(i + 1) ? [i + 1] : []))).toEqual([]);
  expect(parts.length).toBeGreaterThan(0);
});
