import { DEFAULTS_IN_FORCE, type Infeasible, type Plan } from "../core/index.js";
import type { Host } from "../hosts/host.js";
import { openBook } from "./book.js";
import { bringInListStep, type ListTarget } from "./bringInList.js";
import { bringInOffersStep } from "./bringInOffers.js";
import { matchStep } from "./match.js";
import { bookBasket, isPlan, orderStep } from "./order.js";
import { wantsOf } from "./orderBook.js";
import type { PlanService } from "./planBasket.js";
import { listSource, previewList, type ReadFile, type UnderstandLines } from "./previewList.js";
import { readVendorList } from "./readVendorList.js";
import { doStep, type Step } from "./step.js";

/** A file as it was read from a disk. */
export type GivenFile = { readonly name: string; readonly bytes: Uint8Array };

/** What the whole job starts from: a list and where it belongs, the vendors' lists with their names, their date. */
export type JobFiles = {
  readonly list: GivenFile;
  readonly target: ListTarget;
  readonly era: number | null;
  readonly offers: readonly { readonly vendor: string; readonly file: GivenFile }[];
  readonly listDate: string;
};

/** How files are read, lists understood and plans found; on a page by other threads. */
export type JobServices = {
  readonly read: ReadFile;
  readonly understand: UnderstandLines;
  readonly plan: PlanService;
};

/** What was done, step by step, and the plan; null where nothing was to be bought. */
export type JobDone = { readonly done: readonly string[]; readonly plan: Plan | Infeasible | null };

/**
 * The whole job with one list: bring it in, bring in the vendors' lists, find offers, plan an order, write it.
 *
 * @throws PartsError "not-a-list" where the list has no parts; what the sources throw for a file they can't read.
 */
export async function wholeJob(host: Host, files: JobFiles, { read, understand, plan }: JobServices): Promise<JobDone> {
  const done: string[] = [];
  const run = async (step: Step) => {
    await doStep(host, step);
    done.push([step.name, ...step.notes].join(". "));
  };
  const source = await listSource(read, files.list.name, files.list.bytes);
  const answers = { capitalM: null, era: files.era, inForce: DEFAULTS_IN_FORCE };
  const reading = await previewList(understand, source, answers);
  await run(bringInListStep(await openBook(host), reading, files.target));
  for (const { vendor, file } of files.offers) {
    const book = await openBook(host);
    const { listDate } = files;
    await run(
      bringInOffersStep(
        book,
        await readVendorList(read, book, { vendor, file: file.name, bytes: file.bytes, listDate }),
      ),
    );
  }
  const matched = await openBook(host);
  await run(matchStep(matched));
  const book = await openBook(host);
  const wants = wantsOf(book);
  const basket = bookBasket(book, wants);
  if (basket.lines.length === 0) return { done, plan: null };
  const found = await plan(basket, () => {});
  if (isPlan(found)) await run(orderStep(book, wants, basket, found));
  return { done, plan: found };
}
