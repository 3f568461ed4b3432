import { Button, Link, makeStyles } from "@fluentui/react-components";
import { stockSparesStep } from "../../commands/deliveries.js";
import type { ViewRow } from "../../commands/openSheet.js";
import { orderPapersStep, vendorOrders, whoGetsWhat } from "../../commands/orderPapers.js";
import { doesSomething } from "../../commands/step.js";
import { csvOf, moneyText, type ORDER_SHEET, type Table } from "../../core/index.js";
import { textOf, useBench } from "../bench.js";
import { Quiet, Row, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";
import type { ScreenProps } from "../screens.js";
import { OrderLine } from "./OrderLine.js";

const useStyles = makeStyles({ list: { listStyle: "none", margin: 0, padding: 0 } });

type Line = ViewRow<typeof ORDER_SHEET>;

/** The order in the sheet: its papers, then vendor by vendor what became of each line. */
export function OrderLines({ rows, go }: { rows: readonly Line[] } & ScreenProps) {
  if (rows.length === 0) return null;
  const vendors = [...new Set(rows.map(({ values }) => values.vendor ?? ""))];
  return (
    <>
      <OrderPapers />
      {vendors.map((vendor) => (
        <VendorLines
          key={vendor}
          vendor={vendor}
          rows={rows.filter(({ values }) => (values.vendor ?? "") === vendor)}
          go={go}
        />
      ))}
    </>
  );
}

/** The papers of the order: as sheets of the workbook, and as CSV files. */
function OrderPapers() {
  const { host, book, run, say } = useBench();
  const write = () =>
    orderPapersStep(host, book)
      .then((step) => run(step))
      .catch((error: unknown) => say({ kind: "problem", text: textOf(error) }));
  const spares = stockSparesStep(book);
  return (
    <Stack title="Papers of the order" isCard>
      <Button onClick={() => void write()}>Write a sheet for each vendor, who gets what, and spares</Button>
      <Quiet>Written again, they take the place of what stood there.</Quiet>
      <Row>
        {[...vendorOrders(book), whoGetsWhat(book)].map((table) => (
          <Csv key={table.name} table={table} />
        ))}
      </Row>
      {doesSomething(spares) && <StepButton step={spares} />}
    </Stack>
  );
}

const Csv = ({ table }: { table: Table }) => (
  <Link href={`data:text/csv;charset=utf-8,${encodeURIComponent(csvOf(table))}`} download={`${table.name}.csv`}>
    {table.name} as CSV
  </Link>
);

function VendorLines({ vendor, rows, go }: { vendor: string; rows: readonly Line[] } & ScreenProps) {
  const styles = useStyles();
  const sums = new Map<string, number>();
  for (const { values } of rows) {
    const currency = values.currency ?? "";
    sums.set(currency, (sums.get(currency) ?? 0) + (values.cost ?? 0));
  }
  return (
    <Stack title={vendor} isCard>
      <Quiet>
        {rows.length} lines, goods{" "}
        {[...sums]
          .filter(([, sum]) => sum > 0)
          .map(([code, sum]) => moneyText(sum, code))
          .join(" and ") || "for nothing"}
      </Quiet>
      <ul className={styles.list}>
        {rows.map((row) => (
          <OrderLine key={row.at} row={row} go={go} />
        ))}
      </ul>
    </Stack>
  );
}
