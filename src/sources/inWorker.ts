import { askThread } from "../threads/askThread.js";
import type { ListReader } from "./reader.js";

/** Lists read in a thread of its own, so that the page stays responsive. */
export function readerInWorker(): ListReader {
  const open = () => new Worker(new URL("./worker.js", import.meta.url), { type: "module" });
  const ask = askThread<ListReader>(open, "The list could not be read");
  return {
    read: (name, bytes, patience) => ask("read", [name, bytes], patience),
    understand: (lines, answers, patience) => ask("understand", [lines, answers], patience),
  };
}
