import {
  bytesOfList,
  changesOfList,
  columnsShown,
  countOfLines,
  finderOf,
  guessMapping,
  type ListFinder,
  type LongList,
  linesIn,
  type OfferMapping,
  type PackedLines,
  readLongList,
  readOffers,
  reasonsOfList,
  refusedOfList,
  sampleOf,
  senseOf,
  withMapping,
  writeMapping,
} from "../core/index.js";
import { packTable } from "../sources/longTable.js";
import { driven } from "../threads/driven.js";
import type { Patience } from "../threads/patience.js";
import type { KeptList, ListFile, LongLists, TriedList } from "./port.js";

/** Where long lists are kept: in a browser its storage, in a test anything. */
export type ListStore = {
  readonly cards: () => Promise<readonly KeptList[]>;
  readonly load: (vendor: string) => Promise<LongList | null>;
  readonly keep: (card: KeptList, list: LongList) => Promise<void>;
  readonly forget: (vendor: string) => Promise<void>;
};

/** A list of more rows does not go into the sheet. */
export const MOST_IN_SHEET = 5000;

/** The lines at the top that may hold heads and notes, and how many of the others show what the columns hold. */
const TOP = 60;
const SAMPLE = 2000;
const TRIED = 300;
const EXAMPLES = 3;

type OpenFile = { readonly name: string; readonly lines: PackedLines; readonly seconds: number };

/**
 * Serves vendors' lists, in whatever thread it runs: reads files, keeps the long ones in a store, answers for them.
 *
 * @param now Milliseconds, for telling how long a reading took.
 */
export function serveLists(store: ListStore, now: () => number): LongLists {
  let file: OpenFile | null = null;
  const finders = new Map<string, Promise<{ list: LongList; finder: ListFinder }>>();
  const opened = (): OpenFile => {
    if (!file) throw new Error("No file is open");
    return file;
  };
  const loaded = (vendor: string) => {
    const there = finders.get(vendor) ?? load(store, vendor);
    finders.set(vendor, there);
    return there;
  };
  const take: LongLists["take"] = async (vendor, listDate, columns, patience = {}) => {
    const { name, lines, seconds } = opened();
    const start = now();
    const sense = senseOf(linesIn(lines), mappingOf(lines, columns), vendor);
    const list = await driven(readLongList(lines, sense), "reading the offers", patience, now);
    const offerSeconds = (now() - start) / 1000;
    const before = await store.load(vendor);
    const kept = cardOf(list, vendor, listDate, name);
    await store.keep(kept, list);
    finders.set(vendor, Promise.resolve({ list, finder: finderOf(list) }));
    file = null;
    return {
      kept,
      understood: writeMapping(sense.mapping),
      currency: sense.mapping.currency,
      reasons: reasonsOfList(list),
      changes: before && changesOfList(before, list),
      seconds: { lines: seconds, offers: offerSeconds },
    };
  };
  return {
    open: async (given, patience = {}) => {
      const start = now();
      const lines = await linesOfFile(given, patience, now);
      file = { name: given.name, lines, seconds: (now() - start) / 1000 };
      return { rows: countOfLines(lines) };
    },
    tryOut: async (vendor, columns) => tried(opened().lines, vendor, columns),
    take,
    kept: store.cards,
    forget: async (vendor) => {
      finders.delete(vendor);
      await store.forget(vendor);
    },
    refused: async (vendor, from, to) => refusedOfList((await loaded(vendor)).list, from, to),
    find: async (vendor, wants, most, known) => {
      const { finder } = await loaded(vendor);
      return { inPlay: finder.inPlay(wants, most), known: finder.byName(known) };
    },
  };
}

async function load(store: ListStore, vendor: string) {
  const list = await store.load(vendor);
  if (!list) throw new Error(`This browser keeps no list of ${vendor}`);
  return { list, finder: finderOf(list) };
}

async function linesOfFile(given: ListFile, patience: Patience, now: () => number): Promise<PackedLines> {
  const bytes = new Uint8Array(await given.arrayBuffer());
  return driven(packTable(given.name, bytes), "reading the lines", patience, now);
}

function mappingOf(lines: PackedLines, columns: string | null): OfferMapping {
  return withMapping(guessMapping(sampleOf(lines, TOP, SAMPLE)), columns);
}

function tried(lines: PackedLines, vendor: string, columns: string | null): TriedList {
  const rows = countOfLines(lines);
  const isWhole = rows <= MOST_IN_SHEET;
  const mapping = mappingOf(lines, columns);
  const sample = isWhole ? [...linesIn(lines)] : sampleOf(lines, TOP, TRIED);
  const { offers, refused, heads } = readOffers(sample, { vendor, mapping });
  return {
    ...{ rows, isWhole, offers, refused, tried: sample.length - heads.length },
    columns: columnsShown(sample, mapping, EXAMPLES),
    understood: writeMapping(mapping),
    currency: mapping.currency,
  };
}

function cardOf(list: LongList, vendor: string, listDate: string, file: string): KeptList {
  return {
    ...{ vendor, listDate, file, rows: countOfLines(list.lines), bytes: bytesOfList(list) },
    ...{ offers: list.places.length, refused: list.refusals.lines.length },
  };
}
