import { Button, Field, makeStyles, Select } from "@fluentui/react-components";
import { useState } from "react";
import { rulesOf } from "../../commands/book.js";
import { sayStep } from "../../commands/decideRows.js";
import { effectOf, isChange } from "../../commands/effects.js";
import type { ViewRow } from "../../commands/openSheet.js";
import { counted } from "../../commands/step.js";
import type { PARTS_SHEET } from "../../core/index.js";
import { useBench } from "../bench.js";
import { PickRule } from "../kit/PickRule.js";
import { Quiet, Row, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";
import { EffectList } from "./EffectList.js";
import { RowPicker } from "./RowPicker.js";
import { type RowChoice, rowChoices } from "./rowChoices.js";

type PartRow = ViewRow<typeof PARTS_SHEET>;

/** A long choice must not widen the pane. */
const useStyles = makeStyles({ select: { minWidth: 0, width: "100%", "& select": { minWidth: 0, width: "100%" } } });

/** Choices whose rows are nothing alike: ticked one by one. */
const ONE_BY_ONE = ["waiting", "open"];

/** One use for many rows: which rows, which use, and what it changes row by row before it is written. */
export function GiveUse({ rows }: { rows: readonly PartRow[] }) {
  const styles = useStyles();
  const [marked, setMarked] = useState<readonly number[]>([]);
  const choices = rowChoices(rows);
  const inSheet = { id: "marked", name: "marked in the sheet", rows: rows.filter(({ at }) => marked.includes(at)) };
  const [id, setId] = useState<string | null>(null);
  const all = inSheet.rows.length > 0 ? [inSheet, ...choices] : choices;
  const choice = all.find((each) => each.id === id) ?? all[0];
  const isWaiting = choices[0]?.id === "waiting";
  return (
    <Stack title="Give many parts one use" isCard>
      {!isWaiting && <Quiet>No part of this set waits for you to decide.</Quiet>}
      <Field label="Which parts" hint="Or mark rows of Parts in the sheet, and take them.">
        <Select className={styles.select} value={choice?.id ?? ""} onChange={(_, { value }) => setId(value)}>
          {all.map((each) => (
            <option key={each.id} value={each.id}>
              {each.name} ({each.rows.length})
            </option>
          ))}
        </Select>
      </Field>
      <TakeMarked
        rows={rows}
        onTake={(taken) => {
          setMarked(taken);
          setId("marked");
        }}
      />
      {choice && <UseOfRows key={`${choice.id} ${choice.rows.length}`} choice={choice} />}
    </Stack>
  );
}

function TakeMarked({ rows, onTake }: { rows: readonly PartRow[]; onTake: (rows: readonly number[]) => void }) {
  const { host, book, say } = useBench();
  const take = async () => {
    const { sheet, spans } = await host.marked();
    const isMarked = ({ at }: PartRow) => spans.some(({ first, last }) => at >= first && at <= last);
    const taken = sheet === book.parts?.name ? rows.filter(isMarked).map(({ at }) => at) : [];
    if (taken.length === 0) say({ kind: "problem", text: "Mark some rows of this set in Parts first." });
    else onTake(taken);
  };
  return (
    <Row>
      <Button onClick={() => void take()}>Take the rows marked in the sheet</Button>
    </Row>
  );
}

function UseOfRows({ choice }: { choice: RowChoice }) {
  const { book } = useBench();
  const [picked, setPicked] = useState<readonly number[]>(() =>
    ONE_BY_ONE.includes(choice.id) ? [] : choice.rows.map(({ at }) => at),
  );
  /** Null while none is chosen; "" leaves the use open. */
  const [use, setUse] = useState<string | null>(null);
  const { rows } = choice;
  const ticked = new Set(picked);
  const taken = rows.filter((row) => ticked.has(row.at));
  const kinds = new Set(taken.map(({ values }) => values.kind));
  const inForce = rulesOf(book, rows[0]?.values.project ?? null);
  const roles = inForce.rules.filter(({ scope, kind }) => scope === "role" && (kind === null || kinds.has(kind)));
  const effects = use === null ? [] : taken.map((row) => effectOf(row, inForce, { cells: { usedAs: use || null } }));
  const step = sayStep(book, taken, "usedAs", use ?? "", use ? `the use ${use}` : "no use yet");
  return (
    <>
      <RowPicker
        rows={rows}
        picked={picked}
        onPick={setPicked}
        say={({ values }) => [values.value, values.usedAs ?? "use not known"].filter(Boolean).join(", ")}
      />
      <Row>
        <Button onClick={() => setPicked(picked.length === rows.length ? [] : rows.map(({ at }) => at))}>
          {picked.length === rows.length ? "Tick none" : "Tick all"}
        </Button>
        <Quiet>{counted(taken.length, "part")} ticked</Quiet>
      </Row>
      <PickRule
        label="Used as"
        hint="Look which tube pin, supply or line lead each hangs on."
        rules={roles}
        value={use}
        onPick={setUse}
        onOpen={() => setUse("")}
      />
      {use === "" && <Quiet>The use is left open: it is asked again where it matters.</Quiet>}
      {use !== null && taken.length > 0 && (
        <>
          <div>
            {counted(effects.filter(isChange).length, "answer")} of {taken.length} would change.
          </div>
          <EffectList effects={effects} />
          <Row>
            <StepButton step={step} appearance="primary" then={() => setUse(null)} />
            <Button onClick={() => setUse(null)}>Leave it</Button>
          </Row>
        </>
      )}
    </>
  );
}
