import { makeStyles, tokens } from "@fluentui/react-components";
import { rulesOf } from "../../commands/book.js";
import { chainOf, type PartsRow, stagesOf } from "../../core/index.js";
import { useBench } from "../bench.js";
import { Stack } from "../kit/Stack.js";

const useStyles = makeStyles({
  list: { margin: 0, paddingLeft: "24px", display: "flex", flexDirection: "column", gap: "4px" },
  from: { color: tokens.colorNeutralForeground2 },
});

/** The chain of facts and rules behind a part's answer. */
export function WhyChain({ row }: { row: PartsRow }) {
  const { book } = useBench();
  const styles = useStyles();
  return (
    <Stack title="Why" isCard>
      <ol className={styles.list}>
        {chainOf(stagesOf(row, rulesOf(book, row.project))).map(([about, says, from]) => (
          <li key={`${about} ${says} ${from}`}>
            <strong>{about}</strong>: {says}
            {from && <div className={styles.from}>{from}</div>}
          </li>
        ))}
      </ol>
    </Stack>
  );
}
