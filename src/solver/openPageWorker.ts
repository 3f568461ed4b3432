import type { PlanNews, PlanWorker } from "./planInWorker.js";

/** A worker of the page that looks for plans. @param wasm Address of the solver's binary. */
export function openPageWorker(wasm: string): PlanWorker {
  const worker = new Worker(new URL("./pageWorker.js", import.meta.url), { type: "module" });
  return {
    send: (request) => worker.postMessage({ ...request, wasm }),
    listen: (hear, fail) => {
      worker.onmessage = ({ data }: MessageEvent<PlanNews>) => hear(data);
      worker.onerror = ({ message }) => fail(new Error(message));
    },
    end: () => worker.terminate(),
  };
}
