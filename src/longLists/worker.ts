import { PartsError } from "../core/index.js";
import type { ListAnswer, ListRequest } from "./messages.js";
import type { LongLists, Patience } from "./port.js";
import { serveLists } from "./serve.js";
import { browserStore } from "./store.js";

/** Vendors' lists in a thread of their own: answers the page's questions, one beside the other. */
const thread = globalThis as unknown as {
  onmessage: ((event: { data: ListRequest }) => void) | null;
  postMessage(answer: ListAnswer): void;
};

const lists = serveLists(browserStore, () => performance.now());
const stops = new Map<number, AbortController>();

thread.onmessage = async ({ data: request }) => {
  const { id } = request;
  if (request.ask === "stop") return stops.get(id)?.abort();
  const stop = new AbortController();
  stops.set(id, stop);
  const onProgress = (progress: number, doing: string) => thread.postMessage({ id, progress, doing });
  try {
    thread.postMessage({ id, value: await answer(request.ask, request.about, { onProgress, signal: stop.signal }) });
  } catch (error) {
    thread.postMessage(error instanceof PartsError ? { id, problem: error.problem } : { id, error: messageOf(error) });
  }
  stops.delete(id);
};

function answer(ask: keyof LongLists, about: readonly unknown[], patience: Patience): Promise<unknown> {
  return (lists[ask] as (...about: unknown[]) => Promise<unknown>)(...about, patience);
}

const messageOf = (error: unknown) => (error instanceof Error ? error.message : String(error));
