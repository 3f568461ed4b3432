import type { Problem } from "../core/index.js";
import type { LongLists } from "./port.js";

/** What the page asks of the worker: one of the port's questions with what it is about, or to stop one asked before. */
export type ListRequest =
  | { readonly id: number; readonly ask: keyof LongLists; readonly about: readonly unknown[] }
  | { readonly id: number; readonly ask: "stop" };

/** What the worker answers: progress as often as there is some, then one of the others. */
export type ListAnswer = { readonly id: number } & (
  | { readonly progress: number; readonly doing: string }
  | { readonly value: unknown }
  | { readonly problem: Problem }
  | { readonly error: string }
);
