import { readFileSync } from "node:fs";
import { DEFAULTS_IN_FORCE } from "../core/index.js";
import { casesOf } from "./cases/case.js";
import { decideCase } from "./cases/decideCase.js";

/** Prints the decision of every case in the files named, one JSON line each: `npm run -s decide -- FILE...` */
const files = process.argv.slice(2);
if (files.length === 0) throw new Error("Name a file of cases: npm run -s decide -- FILE");
for (const file of files) {
  for (const one of casesOf(readFileSync(file, "utf8"))) {
    process.stdout.write(`${JSON.stringify(decideCase(one, DEFAULTS_IN_FORCE))}\n`);
  }
}
