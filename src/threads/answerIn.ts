import { PartsError } from "../core/index.js";
import type { ThreadAnswer, ThreadRequest } from "./messages.js";
import { inPieces } from "./pieces.js";

/** The inside of a thread, as far as answers need it. */
export type Thread = {
  onmessage: ((event: { data: ThreadRequest }) => void) | null;
  postMessage(answer: ThreadAnswer): void;
};

/**
 * Answers in this thread what `askThread` asks of a port, one question beside the other.
 *
 * @param port Functions of plain data; each gets a `Patience` behind what it is about.
 */
export function answerIn(thread: Thread, port: object): void {
  const stops = new Map<number, AbortController>();
  thread.onmessage = async ({ data: request }) => {
    const { id } = request;
    if ("stop" in request) return stops.get(id)?.abort();
    const { signal } = keep(stops, id);
    const onProgress = (progress: number, doing: string) => thread.postMessage({ id, progress, doing });
    try {
      const question = port[request.ask as keyof typeof port] as (...about: unknown[]) => Promise<unknown>;
      const { pieces, rest } = inPieces(await question(...request.about, { onProgress, signal }));
      for (const piece of pieces) thread.postMessage({ id, piece });
      thread.postMessage({ id, value: rest });
    } catch (error) {
      thread.postMessage(
        error instanceof PartsError ? { id, problem: error.problem } : { id, error: messageOf(error) },
      );
    }
    stops.delete(id);
  };
}

function keep(stops: Map<number, AbortController>, id: number): AbortController {
  const stop = new AbortController();
  stops.set(id, stop);
  return stop;
}

const messageOf = (error: unknown) => (error instanceof Error ? error.message : String(error));
