import { type Offer, STATUSES, type Status } from "../offer.js";
import { type LongList, offerOfList } from "./longList.js";
import { placesOfNumbers } from "./numberTable.js";

/** What may have become of an offer since the last list, in words. */
export const LIST_CHANGES = [
  "new",
  "gone from the list",
  "no longer made",
  "last chance to buy",
  "out of stock",
  "to be had again",
  "dearer",
  "cheaper",
] as const;
export type ListChange = (typeof LIST_CHANGES)[number];

/** How many offers changed in one way, and the first of them. */
export type ChangedOffers = {
  readonly change: ListChange;
  readonly count: number;
  readonly examples: readonly Offer[];
};

const EXAMPLES = 5;

/** What is said of an offer whose status has become another one. */
export const STATUS_CHANGE: Readonly<Record<Status, ListChange>> = {
  discontinued: "no longer made",
  "last-time-buy": "last chance to buy",
  "out-of-stock": "out of stock",
  "in-stock": "to be had again",
};

/** What is different between two lists of one vendor; offers are known again by their stock numbers. */
export function changesOfList(old: LongList, fresh: LongList): readonly ChangedOffers[] {
  const found = new Map<ListChange, { count: number; examples: Offer[] }>();
  const note = (change: ListChange, list: LongList, row: number) => {
    const so = found.get(change) ?? { count: 0, examples: [] };
    found.set(change, so);
    so.count++;
    if (so.examples.length < EXAMPLES) so.examples.push(offerOfList(list, row));
  };
  const inOld = placesOfNumbers(old.marks.names);
  const inFresh = placesOfNumbers(fresh.marks.names);
  fresh.marks.names.forEach((name, row) => {
    const before = inOld(name);
    if (before < 0) note("new", fresh, row);
    else for (const change of changesOfOffer(old, before, fresh, row)) note(change, fresh, row);
  });
  old.marks.names.forEach((name, row) => {
    if (inFresh(name) < 0) note("gone from the list", old, row);
  });
  return LIST_CHANGES.flatMap((change) => (found.has(change) ? [{ change, ...found.get(change)! }] : []));
}

function changesOfOffer(old: LongList, before: number, fresh: LongList, now: number): ListChange[] {
  const [was, is] = [old.marks.prices[before]!, fresh.marks.prices[now]!];
  const status = fresh.marks.statuses[now]!;
  const hasTurned = status !== old.marks.statuses[before];
  return [
    ...(hasTurned ? [STATUS_CHANGE[STATUSES[status]!]] : []),
    ...(is > was ? (["dearer"] as const) : []),
    ...(is < was ? (["cheaper"] as const) : []),
  ];
}
