import { makeStyles, Select, tokens } from "@fluentui/react-components";
import type { TriedList } from "../../commands/longLists.js";
import { COLUMN_FIELDS, type ColumnField, writeColumns } from "../../core/index.js";

const useStyles = makeStyles({
  list: { listStyle: "none", margin: 0, padding: 0 },
  item: {
    display: "grid",
    gridTemplateColumns: "minmax(0, 1fr) minmax(0, 150px)",
    gap: "8px",
    alignItems: "center",
    padding: "4px 0",
    borderBottom: `1px solid ${tokens.colorNeutralStroke3}`,
  },
  examples: {
    color: tokens.colorNeutralForeground2,
    overflow: "hidden",
    textOverflow: "ellipsis",
    whiteSpace: "nowrap",
  },
});

const fieldText = (field: ColumnField) => (field === "nothing" ? "not used" : field);

/**
 * The columns of a vendor's list: what each is understood as, beside what stands in it, and a choice to correct it.
 *
 * @param onCorrect Given all columns as they are remembered for the vendor.
 */
export function ListColumns(props: { columns: TriedList["columns"]; onCorrect: (columns: string) => void }) {
  const styles = useStyles();
  const correct = (index: number, field: string) => {
    const known = COLUMN_FIELDS.find((each) => each === field) ?? "nothing";
    props.onCorrect(
      writeColumns(props.columns.map((each) => (each.index === index ? { ...each, field: known } : each))),
    );
  };
  return (
    <ul className={styles.list} aria-label="Columns understood as">
      {props.columns.map(({ index, name, field, examples }) => (
        <li key={index} className={styles.item}>
          <div>
            <strong>{name}</strong>
            <div className={styles.examples} title={examples.join("\n")}>
              {examples.join("; ") || "empty"}
            </div>
          </div>
          <Select aria-label={`${name} is`} value={field} onChange={(_, { value }) => correct(index, value)}>
            {COLUMN_FIELDS.map((each) => (
              <option key={each} value={each}>
                {fieldText(each)}
              </option>
            ))}
          </Select>
        </li>
      ))}
    </ul>
  );
}
