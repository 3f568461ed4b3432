import { Button, Field, Input } from "@fluentui/react-components";
import { type FormEvent, useState } from "react";
import { type CorrectedCells, type Correction, cellsOfCorrection, type PartsRow } from "../../core/index.js";
import { textOf } from "../bench.js";
import { Row } from "../kit/Stack.js";
import { rowAsCorrected, type UnderstoodPart } from "./lineByLine.js";

const FIELDS = ["value", "tolerance", "watts", "volts"] as const;
const LABELS: Readonly<Record<(typeof FIELDS)[number], string>> = {
  value: "Value",
  tolerance: "Tolerance",
  watts: "Watts",
  volts: "Volts",
};

const printed = (row: PartsRow, field: (typeof FIELDS)[number]) => String(row[field] ?? "");

/** What the page really says of a part; what is typed here is the person's word and outranks the list. */
export function CorrectFigures(props: { part: UnderstoodPart; done: (cells: CorrectedCells | null) => void }) {
  const { part } = props.part;
  const row = rowAsCorrected(props.part);
  const [typed, setTyped] = useState<Correction>({});
  const [problem, setProblem] = useState<string | null>(null);
  const take = (event: FormEvent) => {
    event.preventDefault();
    try {
      props.done(cellsOfCorrection(typed, part.kind));
    } catch (error) {
      setProblem(textOf(error));
    }
  };
  return (
    <form onSubmit={take} aria-label={`${part.designator} as you read it`}>
      {FIELDS.map((field) => (
        <Field key={field} label={`${LABELS[field]} of ${part.designator}`}>
          <Input
            value={typed[field] ?? printed(row, field)}
            onChange={(_, { value }) => {
              setTyped({ ...typed, [field]: value });
              setProblem(null);
            }}
          />
        </Field>
      ))}
      <div role="alert">{problem}</div>
      <Row>
        <Button appearance="primary" type="submit">
          Take it as I read it
        </Button>
        <Button onClick={() => props.done(null)}>Leave it</Button>
      </Row>
    </form>
  );
}
