import { makeStyles, tokens } from "@fluentui/react-components";
import { driftSummary, type PartsRow, readReading } from "../../core/index.js";
import { Stack } from "../kit/Stack.js";

const useStyles = makeStyles({
  table: {
    borderCollapse: "collapse",
    width: "100%",
    "& th, & td": {
      textAlign: "left",
      padding: "4px 6px 4px 0",
      borderBottom: `1px solid ${tokens.colorNeutralStroke3}`,
    },
  },
});

/** Beyond this a resistor counts as drifted here; the rules judge each part by its own limit. */
const LIMIT = 0.2;

/** How far the resistors that were read have drifted: counts by section, never percentages of a few. */
export function DriftTable({ rows }: { rows: readonly PartsRow[] }) {
  const styles = useStyles();
  const read = rows.flatMap(driftOf);
  if (read.length === 0) return null;
  const sections = [...new Set(read.map(({ section }) => section))];
  return (
    <Stack title="Drift so far" isCard>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">Section</th>
            <th scope="col">Read</th>
            <th scope="col">Middle</th>
            <th scope="col">Beyond 20 %</th>
          </tr>
        </thead>
        <tbody>
          {sections.map((section) => {
            const found = driftSummary(read.filter((each) => each.section === section))!;
            return (
              <tr key={section}>
                <th scope="row">{section}</th>
                <td>{found.count}</td>
                <td>{`${found.median >= 0 ? "+" : ""}${Math.round(found.median * 100)} %`}</td>
                <td>{found.beyond}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </Stack>
  );
}

function driftOf(row: PartsRow) {
  if (row.kind !== "resistor" || row.reading === null || row.size === null || row.size <= 0) return [];
  try {
    const { value } = readReading(row.reading, row.value, "resistor");
    return value === null
      ? []
      : [{ nominal: row.size, reading: value, limit: LIMIT, section: row.section ?? "no section" }];
  } catch {
    return [];
  }
}
