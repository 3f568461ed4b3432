import { useSyncExternalStore } from "react";
import type { Scheme } from "./theme.js";

const DARK = "(prefers-color-scheme: dark)";
const CONTRAST = "(forced-colors: active)";

function watch(changed: () => void): () => void {
  const queries = [DARK, CONTRAST].map((query) => window.matchMedia(query));
  for (const query of queries) query.addEventListener("change", changed);
  return () => {
    for (const query of queries) query.removeEventListener("change", changed);
  };
}

function current(): Scheme {
  if (window.matchMedia(CONTRAST).matches) return "high-contrast";
  return window.matchMedia(DARK).matches ? "dark" : "light";
}

/** Light, dark or high contrast, as the host or system has it, followed when it changes. */
export const useScheme = (): Scheme => useSyncExternalStore(watch, current);
