import { rulesOf } from "../../commands/book.js";
import { type PartsRow, whyOf } from "../../core/index.js";
import { useBench } from "../bench.js";
import { Stack } from "../kit/Stack.js";

/** The chain of facts and rules behind a part's answer. */
export function WhyChain({ row }: { row: PartsRow }) {
  const { book } = useBench();
  return (
    <Stack title="Why" isCard>
      <ol style={{ margin: 0, paddingLeft: 20 }}>
        {whyOf(row, rulesOf(book, row.project)).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ol>
    </Stack>
  );
}
