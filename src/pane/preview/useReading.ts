import { useEffect, useState } from "react";
import { previewList, type Source } from "../../commands/previewList.js";
import type { DocumentReading, ListAnswers } from "../../core/index.js";
import { textOf, useBench } from "../bench.js";
import { useWork } from "../kit/Working.js";

/** How a list was understood, or why it is none. */
export type Found = { readonly reading: DocumentReading } | { readonly problem: string };

/**
 * How a source is understood under answers: read anew when they change, in a thread of its own; until then what was found
 * before stays, and is not `current`.
 */
export function useReading(source: Source, answers: ListAnswers) {
  const { services } = useBench();
  const { work, busy } = useWork("Stopped.");
  const [last, setLast] = useState<{ readonly answers: ListAnswers; readonly found: Found } | null>(null);
  useEffect(() => {
    void busy(async (patience) => {
      const found = await previewList(services.understand, source, answers, patience).then(
        (reading) => ({ reading }),
        (error) => ({ problem: textOf(error) }),
      );
      patience.signal.throwIfAborted();
      setLast({ answers, found });
    });
  }, [services, source, answers, busy]);
  return { found: last?.found ?? null, isCurrent: last?.answers === answers, work };
}
