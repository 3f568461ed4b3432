import type { LongList } from "../core/index.js";
import type { KeptList } from "./port.js";
import type { ListStore } from "./serve.js";

/** The lists themselves, and apart from them what is told of each without loading it; both by vendor. */
const LISTS = "lists";
const CARDS = "cards";

/** Long lists in the browser's own storage, in a database apart from that of the workbook. */
export const browserStore: ListStore = {
  cards: async () => (await within("readonly", (of) => of(CARDS).getAll())) as KeptList[],
  load: async (vendor) => ((await within("readonly", (of) => of(LISTS).get(vendor))) as LongList | undefined) ?? null,
  keep: async (card, list) =>
    void (await within("readwrite", (of) => {
      of(CARDS).put(card, card.vendor);
      return of(LISTS).put(list, card.vendor);
    })),
  forget: async (vendor) =>
    void (await within("readwrite", (of) => {
      of(CARDS).delete(vendor);
      return of(LISTS).delete(vendor);
    })),
};

/** One transaction over both stores: all or nothing. Its answer is that of the last request, once all is written. */
async function within<T>(
  mode: IDBTransactionMode,
  work: (of: (store: string) => IDBObjectStore) => IDBRequest<T>,
): Promise<T> {
  const database = await opened();
  try {
    return await new Promise<T>((resolve, reject) => {
      const transaction = database.transaction([LISTS, CARDS], mode);
      const request = work((store) => transaction.objectStore(store));
      transaction.oncomplete = () => resolve(request.result);
      transaction.onerror = () => reject(transaction.error);
      transaction.onabort = () => reject(transaction.error);
    });
  } finally {
    database.close();
  }
}

function opened(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open("underchassis-lists", 1);
    request.onupgradeneeded = () => {
      for (const store of [LISTS, CARDS]) request.result.createObjectStore(store);
    };
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}
