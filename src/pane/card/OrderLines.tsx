import {
  Button,
  Link,
  Menu,
  MenuItem,
  MenuList,
  MenuPopover,
  MenuTrigger,
  makeStyles,
  tokens,
} from "@fluentui/react-components";
import type { ViewRow } from "../../commands/openSheet.js";
import { orderStateStep } from "../../commands/order.js";
import { csvOf, type ORDER_SHEET, ORDER_STATES, orderSheets } from "../../core/index.js";
import { useBench } from "../bench.js";
import { Stack } from "../kit/Stack.js";

const useStyles = makeStyles({
  list: { listStyle: "none", margin: 0, padding: 0 },
  item: { padding: "6px 0", borderBottom: `1px solid ${tokens.colorNeutralStroke3}` },
  line: { display: "flex", gap: "8px", alignItems: "center", justifyContent: "space-between" },
  quiet: { color: tokens.colorNeutralForeground2 },
});

/** The lines of the order in the sheet, vendor by vendor, and what became of each. */
export function OrderLines({ rows }: { rows: readonly ViewRow<typeof ORDER_SHEET>[] }) {
  const styles = useStyles();
  const { book, run } = useBench();
  return orderSheets(rows.map(({ values }) => values)).map((sheet) => (
    <Stack key={sheet.name} title={sheet.name} isCard>
      <Link href={`data:text/csv;charset=utf-8,${encodeURIComponent(csvOf(sheet))}`} download={`${sheet.name}.csv`}>
        The order as a CSV file
      </Link>
      <ul className={styles.list}>
        {rows
          .filter(({ values }) => (values.vendor ?? "") === sheet.name)
          .map(({ at, values }) => (
            <li key={at} className={styles.item}>
              <div className={styles.line}>
                <span>
                  {values.units} x {values.stockNumber ?? values.description}
                </span>
                <Menu>
                  <MenuTrigger disableButtonEnhancement>
                    <Button size="small">{values.state ?? "to order"}</Button>
                  </MenuTrigger>
                  <MenuPopover>
                    <MenuList>
                      {ORDER_STATES.map((state) => (
                        <MenuItem key={state} onClick={() => void run(orderStateStep(book, at, state))}>
                          {state}
                        </MenuItem>
                      ))}
                    </MenuList>
                  </MenuPopover>
                </Menu>
              </div>
              <div className={styles.quiet}>
                {values.description}; for {values.forWhom}; {values.why}
              </div>
            </li>
          ))}
      </ul>
    </Stack>
  ));
}
