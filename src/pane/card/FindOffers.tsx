import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { findOffersStep } from "../../commands/longLists.js";
import { matchStep } from "../../commands/match.js";
import type { Wants } from "../../commands/orderBook.js";
import { doesSomething } from "../../commands/step.js";
import { textOf, useBench } from "../bench.js";
import { StepButton } from "../kit/StepButton.js";

/** Finds offers for the parts: in the sheet alone, or first in the long lists that this browser keeps. */
export function FindOffers({ wants, hasLong }: { wants: Wants; hasLong: boolean }) {
  const { book, host, run, say, services } = useBench();
  const [isBusy, setBusy] = useState(false);
  if (!hasLong) return <StepButton step={matchStep(book, wants)} appearance="primary" />;
  const find = async () => {
    setBusy(true);
    try {
      const step = await findOffersStep(host, book, wants, services.lists);
      if (doesSomething(step)) await run(step);
      else say({ kind: "done", text: step.name });
    } catch (error) {
      say({ kind: "problem", text: textOf(error) });
    }
    setBusy(false);
  };
  return (
    <Button appearance="primary" disabled={isBusy || wants.lines.length === 0} onClick={() => void find()}>
      {isBusy ? "Looking through the lists" : `Find offers for ${wants.demands.length} parts`}
    </Button>
  );
}
