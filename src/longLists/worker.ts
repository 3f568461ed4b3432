import { answerIn, type Thread } from "../threads/answerIn.js";
import { serveLists } from "./serve.js";
import { browserStore } from "./store.js";

answerIn(
  globalThis as unknown as Thread,
  serveLists(browserStore, () => performance.now()),
);
