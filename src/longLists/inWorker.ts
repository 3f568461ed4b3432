import { askThread } from "../threads/askThread.js";
import type { LongLists } from "./port.js";

/** Vendors' lists in a thread of their own, which starts with the first question and stays. */
export function listsInWorker(): LongLists {
  const open = () => new Worker(new URL("./worker.js", import.meta.url), { type: "module" });
  const ask = askThread<LongLists>(open, "The lists could not be read");
  return {
    open: (file, patience) => ask("open", [file], patience),
    tryOut: (...about) => ask("tryOut", about),
    take: (vendor, listDate, columns, patience) => ask("take", [vendor, listDate, columns], patience),
    kept: () => ask("kept", []),
    forget: (...about) => ask("forget", about),
    refused: (...about) => ask("refused", about),
    find: (...about) => ask("find", about),
  };
}
