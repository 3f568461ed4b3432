import type { Problem } from "../core/index.js";
import type { Source } from "./source.js";

/** What the page asks of the reading worker. */
export type ReadRequest = { readonly name: string; readonly bytes: Uint8Array; readonly timeLimit: number | undefined };

/** What the reading worker answers: progress as often as there is some, then one of the others. */
export type ReadAnswer =
  | { readonly progress: number; readonly doing: string }
  | { readonly source: Source }
  | { readonly problem: Problem }
  | { readonly error: string };
