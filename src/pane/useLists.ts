import { useCallback, useEffect, useState } from "react";
import type { KeptList } from "../commands/longLists.js";
import { useBench } from "./bench.js";

/** The long lists that this browser keeps, and how to look again once that has changed. */
export function useLists(): { readonly kept: readonly KeptList[]; readonly look: () => Promise<void> } {
  const { services } = useBench();
  const [kept, setKept] = useState<readonly KeptList[]>([]);
  const look = useCallback(async () => {
    // A browser that lets nothing be stored keeps none; bringing one in says so.
    setKept(await services.lists.kept().catch(() => []));
  }, [services]);
  useEffect(() => void look(), [look]);
  return { kept, look };
}

/** So many bytes in words. @example sizeText(152_300_000) // "152 MB" */
export const sizeText = (bytes: number): string => `${Math.max(1, Math.round(bytes / 1e6))} MB`;

/** A count with its thousands set apart. @example countText(1000000) // "1,000,000" */
export const countText = (count: number): string => count.toLocaleString("en");
