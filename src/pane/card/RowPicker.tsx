import { Checkbox, makeStyles, tokens } from "@fluentui/react-components";
import { useState } from "react";
import type { ViewRow } from "../../commands/openSheet.js";
import type { PARTS_SHEET } from "../../core/index.js";
import { useBench } from "../bench.js";
import { SHOWN, Turn } from "../kit/Turn.js";

const useStyles = makeStyles({
  list: { listStyle: "none", margin: 0, padding: 0, maxHeight: "260px", overflowY: "auto" },
  item: { display: "flex", alignItems: "center", borderBottom: `1px solid ${tokens.colorNeutralStroke3}` },
  name: {
    background: "none",
    border: "none",
    font: "inherit",
    color: tokens.colorNeutralForeground1,
    textAlign: "left",
    cursor: "pointer",
    padding: "6px 0",
    flexGrow: 1,
    minWidth: 0,
    ":hover": { textDecorationLine: "underline" },
    ":focus-visible": { outline: `2px solid ${tokens.colorStrokeFocus2}` },
  },
  quiet: { color: tokens.colorNeutralForeground2 },
});

type Row = ViewRow<typeof PARTS_SHEET>;

/** Rows of Parts to go to, or to do something with together: a click selects the row in the sheet, or does what `onGo` says. */
export function RowPicker(props: {
  rows: readonly Row[];
  picked?: readonly number[];
  onPick?: (picked: readonly number[]) => void;
  onGo?: (row: Row) => void;
  say: (row: Row) => string;
}) {
  const styles = useStyles();
  const { host, book } = useBench();
  const { picked = [], onPick } = props;
  const goTo = (row: Row) =>
    void host.select({ sheet: book.parts?.name ?? "Parts", row: row.at, column: book.parts?.places.designator ?? 0 });
  const [turned, turnTo] = useState(0);
  const from = turned < props.rows.length ? turned : 0;
  return (
    <>
      <ul className={styles.list}>
        {props.rows.slice(from, from + SHOWN).map((row) => (
          <li key={row.at} className={styles.item}>
            {onPick && (
              <Checkbox
                aria-label={`Take ${row.values.designator}`}
                checked={picked.includes(row.at)}
                onChange={(_, { checked }) =>
                  onPick(checked ? [...picked, row.at] : picked.filter((at) => at !== row.at))
                }
              />
            )}
            <button type="button" className={styles.name} onClick={() => (props.onGo ?? goTo)(row)}>
              <strong>{row.values.designator}</strong> {row.values.section}{" "}
              <span className={styles.quiet}>{props.say(row)}</span>
            </button>
          </li>
        ))}
      </ul>
      <Turn from={from} count={props.rows.length} turnTo={turnTo} />
    </>
  );
}
