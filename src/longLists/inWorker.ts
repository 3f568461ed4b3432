import { PartsError } from "../core/index.js";
import type { ListAnswer, ListRequest } from "./messages.js";
import type { LongLists, Patience } from "./port.js";

type Waiting = {
  readonly resolve: (value: unknown) => void;
  readonly reject: (error: unknown) => void;
  readonly patience: Patience;
};

/** Vendors' lists in a thread of their own, which starts with the first question and stays. */
export function listsInWorker(): LongLists {
  const waiting = new Map<number, Waiting>();
  let worker: Worker | null = null;
  let asked = 0;
  const hear = (id: number, answer: ListAnswer) => {
    const { resolve, reject, patience } = waiting.get(id) ?? NOBODY;
    if ("progress" in answer) return patience.onProgress?.(answer.progress, answer.doing);
    waiting.delete(id);
    if ("value" in answer) resolve(answer.value);
    else reject("problem" in answer ? asError(answer.problem) : new Error(answer.error));
  };
  const fail = (message: string) => {
    for (const { reject } of waiting.values()) reject(new Error(`The lists could not be read: ${message}`));
    waiting.clear();
    worker = null;
  };
  const thread = (): Worker => {
    if (worker) return worker;
    worker = new Worker(new URL("./worker.js", import.meta.url), { type: "module" });
    worker.onmessage = ({ data }: MessageEvent<ListAnswer>) => hear(data.id, data);
    worker.onerror = ({ message }) => fail(message);
    return worker;
  };
  const ask =
    <K extends keyof LongLists>(what: K) =>
    (about: readonly unknown[], patience: Patience = {}): ReturnType<LongLists[K]> => {
      const id = asked++;
      const send = (request: ListRequest) => thread().postMessage(request);
      const answer = new Promise((resolve, reject) => waiting.set(id, { resolve, reject, patience }));
      send({ id, ask: what, about });
      patience.signal?.addEventListener("abort", () => send({ id, ask: "stop" }), { once: true });
      return answer as ReturnType<LongLists[K]>;
    };
  return {
    open: (file, patience) => ask("open")([file], patience),
    tryOut: (...about) => ask("tryOut")(about),
    take: (vendor, listDate, columns, patience) => ask("take")([vendor, listDate, columns], patience),
    kept: () => ask("kept")([]),
    forget: (...about) => ask("forget")(about),
    refused: (...about) => ask("refused")(about),
    find: (...about) => ask("find")(about),
  };
}

const NOBODY: Waiting = { resolve: () => {}, reject: () => {}, patience: {} };

const asError = ({ code, given, wanted, at }: PartsError["problem"]) => new PartsError(code, given, wanted, at);
