import { Button } from "@fluentui/react-components";
import { useEffect, useMemo, useState } from "react";
import { valuesOf } from "../../commands/book.js";
import { ruleBookOf } from "../../commands/rulesChange.js";
import { rulesChangedSince } from "../../commands/rulesWatch.js";
import { useBench } from "../bench.js";
import { Row, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";
import { EffectList } from "./EffectList.js";

/** What became of Rules and Settings since they were last looked at, wherever they were changed, with the way back. */
export function RulesChangedCard() {
  const { book } = useBench();
  const sets = valuesOf(book.projects)
    .map(({ short }) => short)
    .join(" ");
  const [seen, setSeen] = useState({ sets, ruleBook: ruleBookOf(book) });
  const changed = useMemo(
    () => (seen.sets === sets ? rulesChangedSince(book, seen.ruleBook) : null),
    [book, seen, sets],
  );
  const look = () => setSeen({ sets, ruleBook: ruleBookOf(book) });
  // biome-ignore lint/correctness/useExhaustiveDependencies: another workbook, or its first list, is looked at anew
  useEffect(look, [sets]);
  if (!changed) return null;
  return (
    <Stack title="The rules changed" isCard>
      {changed.what.map((text) => (
        <div key={text}>{text}</div>
      ))}
      <EffectList effects={changed.effects} />
      <Row>
        <Button onClick={look}>Seen</Button>
        <StepButton step={changed.back} label="Take it back" />
      </Row>
    </Stack>
  );
}
