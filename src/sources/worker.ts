import { answerIn, type Thread } from "../threads/answerIn.js";
import { listReader } from "./reader.js";

answerIn(
  globalThis as unknown as Thread,
  listReader(() => performance.now()),
);
