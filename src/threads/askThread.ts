import { PartsError } from "../core/index.js";
import type { ThreadAnswer, ThreadRequest } from "./messages.js";
import type { Patience } from "./patience.js";
import { type Piece, putTogether } from "./pieces.js";

type Waiting = {
  readonly resolve: (value: unknown) => void;
  readonly reject: (error: unknown) => void;
  readonly patience: Patience;
  readonly pieces: Piece[];
};

/** Asks one question of a port in another thread. Bytes it is about are handed over: empty here afterwards. */
export type Ask<Port> = <Question extends string & keyof Port>(
  question: Question,
  about: readonly unknown[],
  patience?: Patience,
) => Port[Question] extends (...about: never[]) => infer Answer ? Answer : never;

/**
 * Asks questions of a port that another thread serves with `answerIn`; the thread starts with the first one and stays.
 *
 * An answer rejects as the port does with a PartsError, with the signal's reason when stopped, and where the thread fails.
 *
 * @param failed What is said before the thread's own words where it fails: "The lists could not be read".
 */
export function askThread<Port>(open: () => Worker, failed: string): Ask<Port> {
  const waiting = new Map<number, Waiting>();
  let worker: Worker | null = null;
  let asked = 0;
  const fail = ({ message }: ErrorEvent) => {
    for (const { reject } of waiting.values()) reject(new Error(`${failed}: ${message}`));
    waiting.clear();
    worker = null;
  };
  const thread = (): Worker => {
    if (worker) return worker;
    worker = open();
    worker.onmessage = ({ data }: MessageEvent<ThreadAnswer>) => hear(waiting, data);
    worker.onerror = fail;
    return worker;
  };
  const send = (request: ThreadRequest, bytes: ArrayBuffer[] = []) => thread().postMessage(request, bytes);
  const ask = (question: string, about: readonly unknown[], patience: Patience = {}): Promise<unknown> =>
    new Promise((resolve, reject) => {
      const { signal } = patience;
      signal?.throwIfAborted();
      const id = asked++;
      waiting.set(id, { resolve, reject, patience, pieces: [] });
      send({ id, ask: question, about }, about.flatMap(bufferOf));
      const stop = () => {
        if (!waiting.delete(id)) return;
        send({ id, stop: true });
        reject(signal?.reason);
      };
      signal?.addEventListener("abort", stop, { once: true });
    });
  return ask as Ask<Port>;
}

function hear(waiting: Map<number, Waiting>, answer: ThreadAnswer): void {
  const asker = waiting.get(answer.id);
  if (!asker) return;
  const { resolve, reject, patience, pieces } = asker;
  if ("progress" in answer) patience.onProgress?.(answer.progress, answer.doing);
  else if ("piece" in answer) pieces.push(answer.piece);
  else {
    waiting.delete(answer.id);
    if ("value" in answer) resolve(putTogether({ pieces, rest: answer.value }));
    else reject("problem" in answer ? asError(answer.problem) : new Error(answer.error));
  }
}

const bufferOf = (about: unknown): ArrayBuffer[] =>
  about instanceof Uint8Array && about.buffer instanceof ArrayBuffer ? [about.buffer] : [];

const asError = ({ code, given, wanted, at }: PartsError["problem"]) => new PartsError(code, given, wanted, at);
