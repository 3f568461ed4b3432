import { Button, makeStyles, tokens } from "@fluentui/react-components";
import { valuesOf } from "../../commands/book.js";
import type { KeptList } from "../../commands/longLists.js";
import type { VendorsRow } from "../../core/index.js";
import { useBench } from "../bench.js";
import { Quiet, Stack } from "../kit/Stack.js";
import { countText, sizeText } from "../useLists.js";

const useStyles = makeStyles({
  list: { margin: 0, paddingLeft: "18px", display: "flex", flexDirection: "column", gap: "8px" },
  quiet: { color: tokens.colorNeutralForeground2 },
});

/** The vendors, the date and size of their lists, how the columns were understood; long lists can be forgotten. */
export function VendorLists(props: { kept: readonly KeptList[]; onForget: (vendor: string) => void }) {
  const styles = useStyles();
  const { book } = useBench();
  const vendors = valuesOf(book.vendors);
  const strangers = props.kept.filter(({ vendor }) => !vendors.some((row) => row.vendor === vendor));
  return (
    <Stack title="Vendors">
      {vendors.length === 0 && <Quiet>No vendor yet. Bring in a list: CSV, TSV or .xlsx, columns in any order.</Quiet>}
      <ul className={styles.list}>
        {vendors.map((row) => (
          <li key={row.vendor}>
            <strong>{row.vendor}</strong>: {countText(row.offers ?? 0)} offers, list of {row.listDate ?? "no date"}
            {row.refused ? `, ${countText(row.refused)} rows not read` : ""}
            {row.leaveOut ? ", left out" : ""}
            <Whole row={row} kept={props.kept.find(({ vendor }) => vendor === row.vendor)} onForget={props.onForget} />
            <div className={styles.quiet}>{row.columns}</div>
          </li>
        ))}
        {strangers.map((list) => (
          <li key={list.vendor}>
            <strong>{list.vendor}</strong>: {countText(list.offers)} offers, list of {list.listDate}. Not a vendor of
            this workbook.
            <Forget list={list} onForget={props.onForget} />
          </li>
        ))}
      </ul>
    </Stack>
  );
}

/** Where the whole of a long list is: in this browser, or in none. */
function Whole({ row, kept, onForget }: { row: VendorsRow; kept?: KeptList; onForget: (vendor: string) => void }) {
  const { book } = useBench();
  if (kept) return <Forget list={kept} onForget={onForget} />;
  const inSheet = valuesOf(book.offers).filter(({ vendor, kind }) => vendor === row.vendor && kind !== null).length;
  if (inSheet >= (row.offers ?? 0)) return null;
  return (
    <Quiet>
      {countText(inSheet)} of them stand in Offers. The whole list is not in this browser: bring it in again to search
      it.
    </Quiet>
  );
}

function Forget({ list, onForget }: { list: KeptList; onForget: (vendor: string) => void }) {
  return (
    <div>
      The whole list is kept in this browser, {sizeText(list.bytes)}.{" "}
      <Button size="small" onClick={() => onForget(list.vendor)} aria-label={`Forget the list of ${list.vendor}`}>
        Forget it
      </Button>
    </div>
  );
}
