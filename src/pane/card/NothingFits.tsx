import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { type Composition, compositionsFor, compositionText, takeCompositionStep } from "../../commands/makeUp.js";
import type { ViewRow } from "../../commands/openSheet.js";
import type { Wants } from "../../commands/orderBook.js";
import type { InTheWay } from "../../commands/standsInTheWay.js";
import type { PARTS_SHEET } from "../../core/index.js";
import { useBench } from "../bench.js";
import { Quiet, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";

/** A want that no offer fits: what stands in its way, and what can be made up from offers in its place. */
export function NothingFits({ want, wants }: { want: InTheWay; wants: Wants }) {
  const { book } = useBench();
  const [isOpen, setOpen] = useState(false);
  const rows = (book.parts?.rows ?? []).filter(({ values }) => want.ids.includes(values.id ?? ""));
  return (
    <Stack>
      <span>
        <strong>{rows.map(({ values }) => `${values.id} ${values.designator ?? ""}`.trim()).join(", ")}</strong> (
        {want.what}): {want.why}
      </span>
      {isOpen ? (
        rows.map((row) => <Compositions key={row.at} row={row} wants={wants} />)
      ) : (
        <div>
          <Button size="small" onClick={() => setOpen(true)}>
            Can it be made up from offers?
          </Button>
        </div>
      )}
    </Stack>
  );
}

function Compositions({ row, wants }: { row: ViewRow<typeof PARTS_SHEET>; wants: Wants }) {
  const { book } = useBench();
  const [found] = useState<readonly Composition[]>(() => compositionsFor(book, row, wants));
  if (found.length === 0) {
    return <Quiet>{row.values.designator}: no up to four of the offers make it up within its limits.</Quiet>;
  }
  return found.map((composition) => (
    <Stack key={composition.text}>
      <StepButton step={takeCompositionStep(book, row, composition)} />
      <Quiet>{compositionText(composition)}</Quiet>
    </Stack>
  ));
}
