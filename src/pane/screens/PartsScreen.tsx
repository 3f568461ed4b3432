import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { rulesOf } from "../../commands/book.js";
import { sayStep } from "../../commands/decideRows.js";
import { fillStep, rowsToFill } from "../../commands/fill.js";
import { partsOnce } from "../../commands/once.js";
import type { ViewRow } from "../../commands/openSheet.js";
import { isToDecide } from "../../commands/overview.js";
import type { PARTS_SHEET } from "../../core/index.js";
import { useBench } from "../bench.js";
import { HandCard } from "../card/HandCard.js";
import { RowPicker } from "../card/RowPicker.js";
import { PickRule } from "../kit/PickRule.js";
import { Quiet, Row, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";
import type { ScreenProps } from "../screens.js";
import { rowInHand, setInHand } from "../useSet.js";

/** The card of the row in the hand, and below it the parts that wait for a person. */
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
  const waiting = partsOnce(bench.book).filter(
    ({ values }) => isToDecide(values) && (short === null || values.project === short),
  );
  const row = rowInHand(bench);
  const open = rowsToFill(parts);
  return (
    <>
      {open.length > 0 && <StepButton step={fillStep(bench.book)} appearance="primary" />}
      {row ? (
        <HandCard key={row.at} row={row} go={go} />
      ) : (
        <Quiet>Select a row of Parts, and its card stands here.</Quiet>
      )}
      <Waiting rows={waiting} />
    </>
  );
}

function Waiting({ rows }: { rows: readonly ViewRow<typeof PARTS_SHEET>[] }) {
  const { book } = useBench();
  const [picked, setPicked] = useState<readonly number[]>([]);
  const [use, setUse] = useState<string | null>(null);
  if (rows.length === 0) return <Quiet>No part of this set waits for you to decide.</Quiet>;
  const taken = rows.filter((row) => picked.includes(row.at));
  const uses = rulesOf(book, rows[0]!.values.project).rules.filter(({ scope }) => scope === "role");
  return (
    <Stack title={`${rows.length} wait for you to decide`} isCard>
      <RowPicker
        rows={rows}
        picked={picked}
        onPick={setPicked}
        say={({ values }) => values.because ?? values.printed ?? ""}
      />
      <PickRule
        label="Used as"
        hint="For the rows you ticked. Leave it if you don't know yet."
        rules={uses}
        value={use}
        onPick={setUse}
      />
      <Row>
        {use && <StepButton step={sayStep(book, taken, "usedAs", use, `the use ${use}`)} then={() => setPicked([])} />}
        <Button onClick={() => setPicked(picked.length === rows.length ? [] : rows.map(({ at }) => at))}>
          {picked.length === rows.length ? "Tick none" : "Tick all"}
        </Button>
      </Row>
    </Stack>
  );
}
