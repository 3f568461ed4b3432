import { Button } from "@fluentui/react-components";
import { useEffect, useMemo, useState } from "react";
import { valuesOf } from "../../commands/book.js";
import { ruleBookOf } from "../../commands/rulesChange.js";
import { rulesChangedSince } from "../../commands/rulesWatch.js";
import { unreadRules } from "../../commands/unread.js";
import { useBench } from "../bench.js";
import { NotRead } from "../kit/NotRead.js";
import { Row, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";
import { EffectList } from "./EffectList.js";

/** What in Rules, in Settings or on a set card can't be read, and what became of them since they were last looked at. */
export function RulesWatch() {
  const { book } = useBench();
  return (
    <>
      <NotRead texts={unreadRules(book)} />
      <RulesChangedCard />
    </>
  );
}

/** What became of Rules and Settings since they were last looked at, wherever they were changed, with the way back. */
function RulesChangedCard() {
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
