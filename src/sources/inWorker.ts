import { PartsError } from "../core/index.js";
import type { ReadAnswer, ReadRequest } from "./messages.js";
import type { ReadOptions, Source } from "./source.js";

/**
 * `readSource` in a thread of its own, so that the page stays responsive. Cancelling ends the thread.
 *
 * @param bytes Handed over to the thread: empty here afterwards.
 * @throws PartsError as `readSource` does; the signal's reason when cancelled.
 */
export function readInWorker(name: string, bytes: Uint8Array, options: ReadOptions = {}): Promise<Source> {
  const { signal, onProgress, timeLimit } = options;
  const worker = new Worker(new URL("./worker.js", import.meta.url), { type: "module" });
  const reading = new Promise<Source>((resolve, reject) => {
    signal?.throwIfAborted();
    signal?.addEventListener("abort", () => reject(signal.reason), { once: true });
    worker.onerror = (event) => reject(new Error(`The file could not be read: ${event.message}`));
    worker.onmessage = ({ data }: MessageEvent<ReadAnswer>) => {
      if ("progress" in data) onProgress?.(data.progress, data.doing);
      else if ("source" in data) resolve(data.source);
      else if ("problem" in data) reject(asError(data.problem));
      else if ("error" in data) reject(new Error(data.error));
    };
    const request: ReadRequest = { name, bytes, timeLimit };
    worker.postMessage(request, bytes.buffer instanceof ArrayBuffer ? [bytes.buffer] : []);
  });
  return reading.finally(() => worker.terminate());
}

const asError = ({ code, given, wanted, at }: PartsError["problem"]) => new PartsError(code, given, wanted, at);
