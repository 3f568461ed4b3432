import { type PlanRequest, type ReasonsRequest, servePlan } from "./planInWorker.js";

/** The page's worker: one request, then its news until it is ended; a failure reaches the page as the worker's error. */
self.onmessage = ({ data }: MessageEvent<PlanRequest | ReasonsRequest>) => {
  servePlan(data, (news) => self.postMessage(news)).catch((error: unknown) => {
    setTimeout(() => {
      throw error;
    });
  });
};
