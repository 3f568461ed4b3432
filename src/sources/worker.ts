import { PartsError } from "../core/index.js";
import type { ReadAnswer, ReadRequest } from "./messages.js";
import { readSource } from "./readSource.js";

/** The reading of files in a thread of its own: one request, answered with progress and then the source or a problem. */
const thread = globalThis as unknown as {
  onmessage: ((event: { data: ReadRequest }) => void) | null;
  postMessage(answer: ReadAnswer): void;
};

thread.onmessage = async ({ data: { name, bytes, timeLimit } }) => {
  const onProgress = (progress: number, doing: string) => thread.postMessage({ progress, doing });
  try {
    const options = timeLimit === undefined ? { onProgress } : { onProgress, timeLimit };
    thread.postMessage({ source: await readSource(name, bytes, options) });
  } catch (error) {
    thread.postMessage(error instanceof PartsError ? { problem: error.problem } : { error: String(error) });
  }
};
