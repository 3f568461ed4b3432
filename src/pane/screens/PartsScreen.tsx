import { Button } from "@fluentui/react-components";
import { fillStep, rowsToFill } from "../../commands/fill.js";
import { listsOf } from "../../commands/joinParts.js";
import { partsOnce } from "../../commands/once.js";
import { useBench } from "../bench.js";
import { GiveUse } from "../card/GiveUse.js";
import { HandCard } from "../card/HandCard.js";
import { Quiet, Row, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";
import type { ScreenProps } from "../screens.js";
import { rowInHand, setInHand } from "../useSet.js";

/** The card of the row in the hand, and below it one use for many rows, those first that wait for a person. */
export function PartsScreen({ go }: ScreenProps) {
  const bench = useBench();
  const { parts } = bench.book;
  if (!parts) {
    return (
      <Stack>
        <Quiet>No parts yet.</Quiet>
        <Button onClick={() => go("list")}>Bring in a parts list</Button>
      </Stack>
    );
  }
  const short = setInHand(bench)?.short ?? null;
  const ofSet = partsOnce(bench.book).filter(({ values }) => short === null || values.project === short);
  const row = rowInHand(bench);
  const open = rowsToFill(parts);
  return (
    <>
      {listsOf(bench.book, short).length > 1 && (
        <Row>
          <Button onClick={() => go("pairs")}>Same part in both lists</Button>
        </Row>
      )}
      {open.length > 0 && <StepButton step={fillStep(bench.book)} appearance="primary" />}
      {row ? (
        <HandCard key={row.at} row={row} go={go} />
      ) : (
        <Quiet>Select a row of Parts, and its card stands here.</Quiet>
      )}
      <div data-screen-only>
        <GiveUse key={short} rows={ofSet} />
      </div>
    </>
  );
}
