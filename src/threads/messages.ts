import type { Problem } from "../core/index.js";
import type { Piece } from "./pieces.js";

/** What the page asks of a thread: a question of its port with what it is about, or to stop one asked before. */
export type ThreadRequest =
  | { readonly id: number; readonly ask: string; readonly about: readonly unknown[] }
  | { readonly id: number; readonly stop: true };

/** What a thread answers: progress as often as there is some, pieces of what is long, then one of the others. */
export type ThreadAnswer = { readonly id: number } & (
  | { readonly progress: number; readonly doing: string }
  | { readonly piece: Piece }
  | { readonly value: unknown }
  | { readonly problem: Problem }
  | { readonly error: string }
);
