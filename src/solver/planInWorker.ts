import type { Basket, Infeasible, Plan } from "../core/index.js";
import { bestPlan } from "./bestPlan.js";

/** What the worker is asked. */
export type PlanRequest = { readonly basket: Basket; readonly seconds: number; readonly wasm?: string };

/** What the worker tells: each better plan, and the answer at the end. */
export type PlanNews =
  | { readonly better: Plan; readonly answer?: undefined }
  | { readonly answer: Plan | Infeasible; readonly better?: undefined };

/** A worker as this side sees it, on a page and in Node alike. */
export type PlanWorker = {
  readonly send: (request: PlanRequest) => void;
  readonly listen: (hear: (news: PlanNews) => void, fail: (error: unknown) => void) => void;
  readonly end: () => void;
};

/** The worker's side: looks for the best plan and posts what it finds. */
export async function servePlan({ basket, ...options }: PlanRequest, post: (news: PlanNews) => void): Promise<void> {
  post({ answer: await bestPlan(basket, { ...options, onBetter: (better) => post({ better }) }) });
}

/** Who hears of better plans, and what cancels: the last plan is kept. */
export type Listening = { readonly onBetter?: (plan: Plan) => void; readonly signal?: AbortSignal };

/** So long past its time a worker may go on before it is ended, in seconds. */
const GRACE = 2;

/**
 * The best plan found in a worker within the time; the last one found where it is cancelled or overstays.
 *
 * @throws What the worker failed with, and an Error where it was stopped before it had any plan.
 */
export function planInWorker(
  worker: PlanWorker,
  request: PlanRequest,
  listening: Listening = {},
): Promise<Plan | Infeasible> {
  return new Promise((resolve, reject) => {
    let last: Plan | null = null;
    const finish = (settle: () => void) => {
      clearTimeout(overstay);
      worker.end();
      settle();
    };
    const stop = () =>
      finish(() => (last ? resolve(last) : reject(new Error("Stopped before a first plan was found."))));
    const overstay = setTimeout(stop, (request.seconds + GRACE) * 1000);
    listening.signal?.addEventListener("abort", stop, { once: true });
    worker.listen(
      (news) => {
        if (news.answer) return finish(() => resolve(news.answer));
        last = news.better;
        listening.onBetter?.(last);
      },
      (error) => finish(() => reject(error)),
    );
    worker.send(request);
  });
}
