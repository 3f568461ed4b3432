import wasm from "highs/runtime";
import { listsInWorker } from "../longLists/inWorker.js";
import type { Services } from "../pane/services.js";
import { openPageWorker } from "../solver/openPageWorker.js";
import { planInWorker, reasonsInWorker } from "../solver/planInWorker.js";
import { readerInWorker } from "../sources/inWorker.js";
import { picturesOf } from "../sources/pictures/picturesOf.js";

/** Seconds the search for a cheaper plan may take; it can be stopped before. */
const SECONDS = 30;

const planWorker = () => openPageWorker(new URL(wasm, document.baseURI).href);

/** What the pane needs of a browser, in Excel and on the page alike; the clock and other threads. */
export const paneServices: Pick<Services, "now" | "read" | "understand" | "lists" | "pages" | "plan" | "planReasons"> =
  {
    now: () => new Date(),
    ...readerInWorker(),
    lists: listsInWorker(),
    pages: picturesOf,
    plan: (basket, onBetter, signal) => planInWorker(planWorker(), { basket, seconds: SECONDS }, { onBetter, signal }),
    planReasons: (basket, why) => reasonsInWorker(planWorker(), { basket, why }),
  };
