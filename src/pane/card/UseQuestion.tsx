import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { rulesOf } from "../../commands/book.js";
import { sayStep } from "../../commands/decideRows.js";
import type { ViewRow } from "../../commands/openSheet.js";
import { labelOf, type PARTS_SHEET, questionOfRow } from "../../core/index.js";
import { useBench } from "../bench.js";
import { Quiet, Row, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";

/** The question about a part's use, where its use is open and would change the answer; each choice says what it comes to. */
export function UseQuestion({ row }: { row: ViewRow<typeof PARTS_SHEET> }) {
  const { book } = useBench();
  const [putOff, setPutOff] = useState<string | null>(null);
  const inForce = rulesOf(book, row.values.project);
  const question = putOff === row.values.id ? null : questionOfRow(row.values, inForce);
  if (!question) return null;
  const label = (role: string) => labelOf(inForce.rules, "role", role);
  return (
    <Stack title={question.text} isCard>
      <Quiet>Look which tube pin, supply or line lead it hangs on. It decides what is fitted:</Quiet>
      {question.choices.map(({ role, label: words, comesTo }) =>
        role === null ? (
          <Row key="open">
            <Button onClick={() => setPutOff(row.values.id)}>Don't know yet</Button>
          </Row>
        ) : (
          <Row key={role}>
            <StepButton step={sayStep(book, [row], "usedAs", label(role), `the use ${label(role)}`)} label={words} />
            <Quiet>{comesTo}</Quiet>
          </Row>
        ),
      )}
    </Stack>
  );
}
