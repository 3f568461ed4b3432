import "./oldNode.js";
import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
import { isPlan } from "../commands/order.js";
import { type GivenFile, wholeJob } from "../commands/wholeJob.js";
import { PartsError } from "../core/index.js";
import { embeddedWorkbook } from "../hosts/embedded.js";
import { Model } from "../hosts/library.js";
import { saveXlsx } from "../hosts/xlsx.js";
import { bestPlan } from "../solver/bestPlan.js";
import { listReader } from "../sources/reader.js";
import { registerFromSources } from "./cellFunctions.js";
import { lendXmlToNode } from "./xmlForNode.js";

const HOW =
  "npm run -s job -- LIST --offers CATALOGUE [--offers CATALOGUE ...] --out FILE.xlsx [--set NAME] [--year YEAR]";

/** Seconds the search for a cheaper plan may take. */
const SECONDS = 20;

const fileOf = (name: string): GivenFile => ({ name: path.basename(name), bytes: new Uint8Array(readFileSync(name)) });

const vendorOf = (name: string) => {
  const stem = path.basename(name).replace(/\.[^.]+$/, "");
  return stem === "catalogue" ? path.basename(path.dirname(name)).replace(/^\d+-/, "") : stem;
};

/** `npm run -s job`: the main job without a browser, by the same commands as the page's. */
async function job(): Promise<void> {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: {
      offers: { type: "string", multiple: true, default: [] },
      out: { type: "string" },
      set: { type: "string" },
      year: { type: "string" },
    },
  });
  const [list, ...more] = positionals;
  if (!list || !values.out) throw new PartsError("not-a-list", "no list or no file to write", `Use: ${HOW}`);
  lendXmlToNode();
  await registerFromSources();
  const { host, model } = embeddedWorkbook(new Model());
  const set = values.set ?? vendorOf(list);
  const { done, plan } = await wholeJob(
    host,
    {
      list: fileOf(list),
      target: { short: "A", set, document: path.basename(list), card: values.year ? { era: values.year } : {} },
      era: Number(values.year) || null,
      offers: [...values.offers, ...more].map((name) => ({ vendor: vendorOf(name), file: fileOf(name) })),
      listDate: new Date().toISOString().slice(0, 10),
    },
    {
      ...listReader(() => performance.now()),
      plan: (basket, onBetter) => bestPlan(basket, { seconds: SECONDS, onBetter }),
    },
  );
  writeFileSync(values.out, await saveXlsx(model()));
  for (const line of done) console.log(line);
  if (plan) console.log(isPlan(plan) ? `${plan.cost.toFixed(2)} in all` : plan.because.join("\n"));
  console.log(`Written to ${values.out}`);
}

job().catch((error: unknown) => {
  console.error(error instanceof PartsError ? error.message : error);
  process.exitCode = 1;
});
