import wasm from "highs/runtime";
import { listsInWorker } from "../longLists/inWorker.js";
import type { Services } from "../pane/services.js";
import { openPageWorker } from "../solver/openPageWorker.js";
import { planInWorker } from "../solver/planInWorker.js";
import { readInWorker } from "../sources/inWorker.js";

/** Seconds the search for a cheaper plan may take; it can be stopped before. */
const SECONDS = 30;

/** What the pane needs of a browser, in Excel and on the page alike; the clock and other threads. */
export const paneServices: Pick<Services, "now" | "read" | "lists" | "plan"> = {
  now: () => new Date(),
  read: (name, bytes) => readInWorker(name, bytes),
  lists: listsInWorker(),
  plan: (basket, onBetter, signal) =>
    planInWorker(
      openPageWorker(new URL(wasm, document.baseURI).href),
      { basket, seconds: SECONDS },
      { onBetter, signal },
    ),
};
