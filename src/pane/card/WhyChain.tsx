import { rulesOf } from "../../commands/book.js";
import { chainOf, type PartsRow, stagesOf } from "../../core/index.js";
import { useBench } from "../bench.js";
import { Stack } from "../kit/Stack.js";

/** The chain of facts and rules behind a part's answer. */
export function WhyChain({ row }: { row: PartsRow }) {
  const { book } = useBench();
  return (
    <Stack title="Why" isCard>
      <ol style={{ margin: 0, paddingLeft: 20 }}>
        {chainOf(stagesOf(row, rulesOf(book, row.project))).map(([about, says, from]) => (
          <li key={`${about} ${says} ${from}`}>
            {about}: {says}
            {from && ` (${from})`}
          </li>
        ))}
      </ol>
    </Stack>
  );
}
