import { expect, test } from "vitest";
import { PartsError } from "../../src/core/index.js";
import { answerIn, type Thread } from "../../src/threads/answerIn.js";
import { askThread } from "../../src/threads/askThread.js";
import { driven } from "../../src/threads/driven.js";
import type { ThreadAnswer } from "../../src/threads/messages.js";
import type { Patience } from "../../src/threads/patience.js";

type Counter = {
  readonly numbers: (count: number) => Promise<{ readonly all: readonly number[]; readonly count: number }>;
  readonly fail: (how: string) => Promise<never>;
  readonly work: (steps: number, patience?: Patience) => Promise<number>;
  readonly size: (bytes: Uint8Array) => Promise<number>;
};

/** A thread that counts, as a browser opens one: what crosses is copied, bytes are handed over. */
function openCounter() {
  const worked: number[] = [];
  const port: Counter = {
    numbers: async (count) => ({ all: Array.from({ length: count }, (_, i) => i), count }),
    fail: async (how) => {
      if (how === "problem") throw new PartsError("unreadable", "4k7x", "Write 4k7.");
      throw new Error("broken");
    },
    work: (steps, patience = {}) => driven(counting(steps, worked), "counting", patience, slowClock()),
    size: async (bytes) => bytes.length,
  };
  const sent: ThreadAnswer[] = [];
  const worker = { onmessage: null, onerror: null } as unknown as Worker;
  const inside: Thread = {
    onmessage: null,
    postMessage: (answer) => {
      sent.push(answer);
      const data = structuredClone(answer);
      setTimeout(() => worker.onmessage?.({ data } as MessageEvent));
    },
  };
  worker.postMessage = (request: unknown, transfer: unknown) => {
    const data = structuredClone(request, { transfer: transfer as ArrayBuffer[] });
    setTimeout(() => inside.onmessage?.({ data: data as never }));
  };
  answerIn(inside, port);
  return { ask: askThread<Counter>(() => worker, "It could not be counted"), worker, sent, worked };
}

function* counting(steps: number, worked: number[]): Generator<number, number> {
  for (let i = 0; i < steps; i++) {
    worked.push(i);
    yield i / steps;
  }
  return steps;
}

/** A clock on which every look takes a second, so that each step is told. */
const slowClock = () => {
  let seconds = 0;
  return () => 1000 * seconds++;
};

test("a short answer comes in one message, a long one in pieces, and both come whole", async () => {
  const { ask, sent } = openCounter();
  expect(await ask("numbers", [3])).toEqual({ all: [0, 1, 2], count: 3 });
  expect(sent).toHaveLength(1);
  expect(await ask("numbers", [4321])).toEqual({ all: Array.from({ length: 4321 }, (_, i) => i), count: 4321 });
  expect(sent).toHaveLength(1 + 5 + 1);
});

test("answers find their own questions", async () => {
  const { ask } = openCounter();
  const answers = await Promise.all([ask("work", [20]), ask("numbers", [2]), ask("work", [3])]);
  expect(answers).toEqual([20, { all: [0, 1], count: 2 }, 3]);
});

test("a problem comes as the problem it was, any other error with its words", async () => {
  const { ask } = openCounter();
  await expect(ask("fail", ["problem"])).rejects.toThrow(PartsError);
  await expect(ask("fail", ["problem"])).rejects.toThrow(/4k7x/);
  await expect(ask("fail", ["error"])).rejects.toThrow(/^broken$/);
});

test("a thread that fails is said, and the next question starts another", async () => {
  const { ask, worker } = openCounter();
  const answer = ask("work", [5]);
  worker.onerror?.({ message: "no memory" } as ErrorEvent);
  await expect(answer).rejects.toThrow("It could not be counted: no memory");
  expect(await ask("work", [5])).toBe(5);
});

test("progress is told, and a stop is answered at once and ends the work", async () => {
  const { ask, worked } = openCounter();
  const stop = new AbortController();
  const told: number[] = [];
  const onProgress = (done: number) => {
    told.push(done);
    if (told.length === 3) stop.abort("enough");
  };
  await expect(ask("work", [1000], { onProgress, signal: stop.signal })).rejects.toBe("enough");
  expect(told).toEqual([0, 0.001, 0.002]);
  await ask("work", [1]);
  expect(worked.length).toBeLessThan(20);
});

test("of answers that overtake each other only the last is worked out", async () => {
  const { ask, worked } = openCounter();
  const overtaken = [1, 2, 3].map(() => {
    const stop = new AbortController();
    const answer = ask("work", [100], { signal: stop.signal });
    stop.abort("overtaken");
    return answer.catch((reason) => reason);
  });
  expect(await ask("work", [7])).toBe(7);
  expect(await Promise.all(overtaken)).toEqual(["overtaken", "overtaken", "overtaken"]);
  expect(worked).toEqual([0, 1, 2, 3, 4, 5, 6]);
});

test("bytes are handed over, not copied", async () => {
  const { ask } = openCounter();
  const bytes = new Uint8Array(5000);
  expect(await ask("size", [bytes])).toBe(5000);
  expect(bytes.length).toBe(0);
});
