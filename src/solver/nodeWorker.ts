import { parentPort, Worker, workerData } from "node:worker_threads";
import { type PlanNews, type PlanRequest, type PlanWorker, type ReasonsRequest, servePlan } from "./planInWorker.js";

/** A worker thread of Node does not take over tsx from its parent, so it asks for it before it loads this file. */
const WITH_TSX = `import("tsx/esm/api").then(({ register }) => (register(), import(${JSON.stringify(import.meta.url)})))`;

/** What tells our own thread from any other that happens to load this file. */
const TASK = "look for a plan";

/** A worker thread of Node that looks for plans; this file is both its door and, inside the thread, its work. */
export function openNodeWorker(): PlanWorker {
  const worker = new Worker(WITH_TSX, { eval: true, workerData: TASK });
  return {
    send: (request) => worker.postMessage(request),
    listen: (hear, fail) => worker.on("message", (news: PlanNews) => hear(news)).on("error", fail),
    end: () => void worker.terminate(),
  };
}

if (workerData === TASK)
  parentPort!.on("message", (request: PlanRequest | ReasonsRequest) =>
    servePlan(request, (news) => parentPort!.postMessage(news)),
  );
