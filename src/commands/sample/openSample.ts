import { DEFAULTS_IN_FORCE } from "../../core/index.js";
import type { Host } from "../../hosts/host.js";
import { readText } from "../../sources/text.js";
import { bringInListStep, type ListTarget } from "../bringInList.js";
import { bringInOffersStep } from "../bringInOffers.js";
import { rateStep } from "../currencies.js";
import { previewList, type UnderstandLines } from "../previewList.js";
import { mappingFor, vendorList } from "../readVendorList.js";
import type { Step } from "../step.js";
import { together } from "../together.js";
import { HARBORLIGHT_LIST } from "./harborlight.js";
import { MILLBROOK_LIST, TERN_LIST } from "./smallSets.js";
import { SAMPLE_RATES, SAMPLE_VENDORS } from "./vendorLists.js";

type SampleList = ListTarget & { readonly file: string; readonly text: string; readonly year: number };

/** The three invented sets of the sample. */
const LISTS: readonly SampleList[] = [
  {
    short: "HL",
    set: "Harborlight console",
    document: "factory list",
    file: "harborlight.txt",
    text: HARBORLIGHT_LIST,
    year: 1955,
    card: { liveChassis: true, pictureTube: true, era: "1955" },
  },
  {
    short: "MB",
    set: "Millbrook table receiver",
    document: "factory list",
    file: "millbrook.txt",
    text: MILLBROOK_LIST,
    year: 1938,
    card: { liveChassis: true, era: "1938" },
  },
  {
    short: "TA",
    set: "Tern amplifier",
    document: "factory list",
    file: "tern.tsv",
    text: TERN_LIST,
    year: 1958,
    card: { era: "1958" },
  },
];

/** Everything the sample holds, read as if the user had brought it in, and written as one step. */
export async function openSampleStep(host: Host, understand: UnderstandLines, listDate: string): Promise<Step> {
  const reads = LISTS.map(async ({ file, text, year, ...target }) => {
    const answers = { capitalM: null, era: year, inForce: DEFAULTS_IN_FORCE };
    return { target, reading: await previewList(understand, readText(text, file), answers) };
  });
  const lists = await Promise.all(reads);
  const vendors = SAMPLE_VENDORS.map(({ vendor, file, text, ...terms }) => {
    const { lines } = readText(text, file);
    const list = vendorList({ vendor, listDate }, lines, mappingFor(null, vendor, lines));
    const { shipping, freeFrom, currency } = terms;
    return { ...list, currency, terms: { shipping, freeFrom } };
  });
  return together(host, "Open the sample", [
    ...lists.map(
      ({ target, reading }) =>
        (book: Parameters<typeof bringInListStep>[0]) =>
          bringInListStep(book, reading, target),
    ),
    ...vendors.map((list) => (book: Parameters<typeof bringInListStep>[0]) => bringInOffersStep(book, list)),
    ...SAMPLE_RATES.map(
      ([currency, rate]) =>
        (book: Parameters<typeof bringInListStep>[0]) =>
          rateStep(book, currency, rate, listDate),
    ),
  ]);
}
