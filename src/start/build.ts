import "./oldNode.js";
import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { gzipSync } from "node:zlib";
import { bundle } from "./bundle/bundle.js";
import { catalogue } from "./reference/catalogue.js";
import { referencePage } from "./reference/referencePage.js";

const DIST = path.resolve("dist");

/** The most that each part of the build may weigh over the wire (gzip), in kB, and what is in it. */
const LIMITS: readonly (readonly [part: string, files: RegExp, most: number])[] = [
  ["the spreadsheet library", /^o-spreadsheet\.js$/, 560],
  ["interface library and pane", /^(interface|pane|page)[^/]*\.js$/, 460],
  ["styles", /\.css$/, 80],
  ["Excel's functions and pane", /^excel\.js$/, 300],
];

/** `npm run build`: everything that can be served, in dist/, and the core as a package. */
async function build(): Promise<void> {
  rmSync(DIST, { recursive: true, force: true });
  await bundle({ mode: "production" });
  writeFileSync(path.join(DIST, "reference.html"), referencePage(await catalogue()));
  execFileSync(process.execPath, [path.resolve("node_modules/typescript/bin/tsc"), "-p", "src/core"], {
    stdio: "inherit",
  });
  const tooBig = LIMITS.filter((limit) => !isWithin(...limit));
  if (tooBig.length > 0) throw new Error(`Over its limit: ${tooBig.map(([part]) => part).join(", ")}.`);
}

function isWithin(part: string, files: RegExp, most: number): boolean {
  const found = readdirSync(DIST).filter((file) => files.test(file));
  const bytes = found.reduce((sum, file) => sum + gzipSync(readFileSync(path.join(DIST, file))).length, 0);
  const weight = bytes / 1000;
  console.log(`${part}: ${weight.toFixed(0)} kB gz of at most ${most}`);
  return weight <= most;
}

await build();
