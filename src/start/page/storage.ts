import type { WorkbookData } from "../../hosts/library.js";

/** A workbook as this browser keeps it between visits. */
export type Kept = { readonly name: string; readonly data: WorkbookData };

const STORE = "workbooks";
const KEY = "current";

/** The workbook of the last visit, or null. */
export async function kept(): Promise<Kept | null> {
  const found = await inStore("readonly", (store) => store.get(KEY));
  return (found as Kept | undefined) ?? null;
}

/** Keeps a workbook until the next visit. */
export async function keep(workbook: Kept): Promise<void> {
  await inStore("readwrite", (store) => store.put(workbook, KEY));
}

async function inStore<T>(mode: IDBTransactionMode, work: (store: IDBObjectStore) => IDBRequest<T>): Promise<T> {
  const database = await answer(opened());
  try {
    return await answer(work(database.transaction(STORE, mode).objectStore(STORE)));
  } finally {
    database.close();
  }
}

function opened(): IDBOpenDBRequest {
  const request = indexedDB.open("underchassis", 1);
  request.onupgradeneeded = () => request.result.createObjectStore(STORE);
  return request;
}

function answer<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}
