import { Button } from "@fluentui/react-components";
import { type KeptDocument, keptDocuments } from "../../commands/linesAgain.js";
import { useBench } from "../bench.js";
import { Quiet, Row, Stack } from "../kit/Stack.js";

/** The lists that stand in Lines, each to be read again: with another meaning of M, a corrected line, new part numbers. */
export function ReadAgain({ onPick }: { onPick: (picked: KeptDocument) => void }) {
  const { book } = useBench();
  const kept = keptDocuments(book);
  if (kept.length === 0) return null;
  return (
    <Stack title="Read a list again" isCard>
      <Quiet>From the sheet Lines, where you can correct a line. Readings and what you typed stay.</Quiet>
      {kept.map((each) => (
        <Row key={`${each.project} ${each.document}`}>
          <Button onClick={() => onPick(each)}>
            {each.document} of {each.project}, {each.lines} lines
          </Button>
        </Row>
      ))}
    </Stack>
  );
}
