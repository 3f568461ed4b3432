import { Button, Field, ProgressBar } from "@fluentui/react-components";
import { useCallback, useEffect, useRef, useState } from "react";
import type { Patience } from "../../commands/previewList.js";
import { textOf, useBench } from "../bench.js";

/** Work that is on its way: how far it is, 0..1, what is being done, and how to stop it. */
export type Work = { readonly done: number; readonly doing: string; readonly stop: () => void };

/** How far work is, with a button that stops it. */
export function Working({ work }: { work: Work }) {
  return (
    <>
      <Field label={`${work.doing}, ${Math.round(work.done * 100)} %`}>
        <ProgressBar value={work.done} />
      </Field>
      <Button onClick={work.stop}>Stop</Button>
    </>
  );
}

/** Why work ends that nobody waits for any more: it is not worth a word. */
const OVERTAKEN = "overtaken by other work";

/**
 * Does what may take long, one thing at a time: new work takes the place of what is not done yet.
 *
 * `isBusy` from the start to the end; `work` is there once something is told of it, so that what is done at once never shows.
 *
 * @param stopped What is said when the user stops it.
 */
export function useWork(stopped: string) {
  const { say } = useBench();
  const [isBusy, setBusy] = useState(false);
  const [work, setWork] = useState<Work | null>(null);
  const inHand = useRef<AbortController | null>(null);
  const busy = useCallback(
    async (task: (patience: Required<Patience>) => Promise<void>) => {
      inHand.current?.abort(OVERTAKEN);
      const own = new AbortController();
      inHand.current = own;
      setBusy(true);
      const { signal } = own;
      const stop = () => own.abort();
      const onProgress = (done: number, doing: string) => signal.aborted || setWork({ done, doing, stop });
      try {
        await task({ onProgress, signal });
      } catch (error) {
        if (signal.reason !== OVERTAKEN) say({ kind: "problem", text: signal.aborted ? stopped : textOf(error) });
      }
      if (inHand.current !== own) return;
      setWork(null);
      setBusy(false);
    },
    [say, stopped],
  );
  useEffect(() => () => inHand.current?.abort(OVERTAKEN), []);
  return { work, isBusy, busy };
}
