import { type Basket, type Infeasible, type Plan, type PlanReasons, planReasons } from "../core/index.js";
import { bestPlan } from "./bestPlan.js";

/** What the worker is asked. */
export type PlanRequest = { readonly basket: Basket; readonly seconds: number; readonly wasm?: string };

/** The other thing it may be asked: why a plan is as it is. */
export type ReasonsRequest = { readonly basket: Basket; readonly why: Plan };

/** What the worker tells: each better plan, and the answer at the end; or the reasons it was asked for. */
export type PlanNews =
  | { readonly better: Plan; readonly answer?: undefined }
  | { readonly answer: Plan | Infeasible; readonly better?: undefined }
  | { readonly reasons: PlanReasons; readonly answer?: undefined; readonly better?: undefined };

/** A worker as this side sees it, on a page and in Node alike. */
export type PlanWorker = {
  readonly send: (request: PlanRequest | ReasonsRequest) => void;
  readonly listen: (hear: (news: PlanNews) => void, fail: (error: unknown) => void) => void;
  readonly end: () => void;
};

/** The worker's side: looks for the best plan and posts what it finds, or says why a plan is as it is. */
export async function servePlan(request: PlanRequest | ReasonsRequest, post: (news: PlanNews) => void): Promise<void> {
  if ("why" in request) return post({ reasons: planReasons(request.basket, request.why) });
  const { basket, ...options } = request;
  post({ answer: await bestPlan(basket, { ...options, onBetter: (better) => post({ better }) }) });
}

/** Why a plan is as it is, worked out in a worker. @throws What the worker failed with. */
export function reasonsInWorker(worker: PlanWorker, request: ReasonsRequest): Promise<PlanReasons> {
  const reasons = new Promise<PlanReasons>((resolve, reject) => {
    worker.listen((news) => "reasons" in news && resolve(news.reasons), reject);
    worker.send(request);
  });
  return reasons.finally(worker.end);
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
        if (!news.better) return;
        last = news.better;
        listening.onBetter?.(last);
      },
      (error) => finish(() => reject(error)),
    );
    worker.send(request);
  });
}
