import { makeStyles, tokens } from "@fluentui/react-components";
import type { ViewRow } from "../../commands/openSheet.js";
import { leadsBackStep } from "../../commands/readings.js";
import type { PARTS_SHEET } from "../../core/index.js";
import { useBench } from "../bench.js";
import { Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";

const useStyles = makeStyles({
  list: { listStyle: "none", margin: 0, padding: 0 },
  item: {
    display: "flex",
    alignItems: "center",
    justifyContent: "space-between",
    gap: "8px",
    padding: "4px 0",
    borderBottom: `1px solid ${tokens.colorNeutralStroke3}`,
  },
});

/** Parts with a lead in the air, wherever in the set they are: each stays here until it is said to be back. */
export function LeadsLifted({ rows }: { rows: readonly ViewRow<typeof PARTS_SHEET>[] }) {
  const styles = useStyles();
  const { book } = useBench();
  if (rows.length === 0) return null;
  return (
    <Stack title={`${rows.length} with a lead lifted`} isCard>
      <ul className={styles.list}>
        {rows.map((row) => (
          <li key={row.at} className={styles.item}>
            <span>
              <strong>{row.values.designator}</strong> {row.values.section}
            </span>
            <StepButton step={leadsBackStep(book, [row])} label="It is back" />
          </li>
        ))}
      </ul>
      {rows.length > 1 && <StepButton step={leadsBackStep(book, rows)} label={`All ${rows.length} are back`} />}
    </Stack>
  );
}
