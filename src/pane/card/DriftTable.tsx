import { Field, makeStyles, mergeClasses, Select } from "@fluentui/react-components";
import { useState } from "react";
import { driftOf, driftStep } from "../../commands/drift.js";
import { COUNTED_BY, type DriftRow, driftText } from "../../core/index.js";
import { useBench } from "../bench.js";
import { Quiet, Row, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";
import { useTableStyles } from "../kit/useTableStyles.js";

const useStyles = makeStyles({
  counts: { overflowWrap: "normal", "& th, & td": { verticalAlign: "top" } },
});

const HEADS: Readonly<Record<(typeof COUNTED_BY)[number], string>> = {
  value: "Value",
  watts: "Watts",
  section: "Section",
};

/** How far the resistors that were read have drifted: counts by value, watts or section, never percentages of a few. */
export function DriftTable({ short }: { short: string | null }) {
  const { book } = useBench();
  const [by, setBy] = useState<(typeof COUNTED_BY)[number]>("value");
  const rows = driftOf(book, short);
  if (rows.length === 0) return null;
  return (
    <Stack title="Drift of the resistors" isCard>
      <Field label="Counted by">
        <Select value={by} onChange={(_, { value }) => setBy(value as typeof by)}>
          {COUNTED_BY.map((each) => (
            <option key={each} value={each}>
              {HEADS[each].toLowerCase()}
            </option>
          ))}
        </Select>
      </Field>
      <Counts by={HEADS[by]} rows={rows.filter((row) => row.by === by)} />
      <Quiet>
        Beyond is outside the limit of each part's rule. What reads low in place is counted as read only: its neighbours
        lower it.
      </Quiet>
      <Row>
        <StepButton step={driftStep(book)} />
      </Row>
    </Stack>
  );
}

function Counts({ by, rows }: { by: string; rows: readonly DriftRow[] }) {
  const look = mergeClasses(useTableStyles().table, useStyles().counts);
  return (
    <table className={look}>
      <thead>
        <tr>
          <th scope="col">{by}</th>
          <th scope="col">Read</th>
          <th scope="col">Middle</th>
          <th scope="col">Beyond</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.group}>
            <th scope="row">{row.group}</th>
            <td>{row.read}</td>
            <td>
              {row.middle === null ? "" : driftText(row.middle)}
              <div>{fromTo(row)}</div>
            </td>
            <td>
              {row.beyond}
              {row.open ? `, ${row.open} open` : ""}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function fromTo({ least, most }: DriftRow): string {
  if (least === null || most === null || least === most) return "";
  return `${driftText(least)} to ${driftText(most)}`;
}
