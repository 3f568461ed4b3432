import { Button, Field, Input, makeStyles, tokens } from "@fluentui/react-components";
import { useState } from "react";
import { valuesOf } from "../../commands/book.js";
import { bringInOffersStep, type VendorList } from "../../commands/bringInOffers.js";
import { matchStep, staleMatches } from "../../commands/match.js";
import { wantsOf } from "../../commands/orderBook.js";
import { readVendorList } from "../../commands/readVendorList.js";
import { standsInTheWay } from "../../commands/standsInTheWay.js";
import { counted } from "../../commands/step.js";
import { textOf, useBench } from "../bench.js";
import { NothingFits } from "../card/NothingFits.js";
import { PickFile } from "../kit/PickFile.js";
import { Quiet, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";
import { logDay } from "../when.js";

const useStyles = makeStyles({
  list: { margin: 0, paddingLeft: "18px" },
  quiet: { color: tokens.colorNeutralForeground2 },
});

/** Vendors and the date of their lists; bring one in; find offers; what nothing fits, and why. */
export function VendorsScreen() {
  const { book } = useBench();
  const vendors = valuesOf(book.vendors);
  const wants = wantsOf(book);
  const stale = staleMatches(book, wants);
  const open = standsInTheWay(wants);
  const styles = useStyles();
  return (
    <>
      <Stack title="Vendors">
        {vendors.length === 0 && (
          <Quiet>No vendor yet. Bring in a list: CSV, TSV or .xlsx, columns in any order.</Quiet>
        )}
        <ul className={styles.list}>
          {vendors.map((row) => (
            <li key={row.vendor}>
              <strong>{row.vendor}</strong>: {row.offers ?? 0} offers, list of {row.listDate ?? "no date"}
              {row.refused ? `, ${row.refused} rows not read` : ""}
              {row.leaveOut ? ", left out" : ""}
              <div className={styles.quiet}>{row.columns}</div>
            </li>
          ))}
        </ul>
      </Stack>
      <BringIn />
      <Stack title="Offers for the parts" isCard>
        {stale.length > 0 && (
          <Quiet>
            Limits, rules or offers have changed since {counted(stale.length, "offer was", "offers were")} found.
          </Quiet>
        )}
        <StepButton step={matchStep(book, wants)} appearance="primary" />
        {open.length > 0 && (
          <>
            <strong>Nothing fits {open.length} of them:</strong>
            {open.map((want) => (
              <NothingFits key={want.ids.join(" ") + want.what} want={want} wants={wants} />
            ))}
          </>
        )}
      </Stack>
    </>
  );
}

function BringIn() {
  const { book, say, services } = useBench();
  const [list, setList] = useState<VendorList | null>(null);
  const [name, setName] = useState("");
  const take = async (file: File) => {
    try {
      const vendor = name || file.name.replace(/\.[^.]+$/, "");
      const bytes = new Uint8Array(await file.arrayBuffer());
      setList(
        await readVendorList(services.read, book, { vendor, file: file.name, bytes, listDate: logDay(services.now()) }),
      );
      say(null);
    } catch (error) {
      say({ kind: "problem", text: textOf(error) });
    }
  };
  return (
    <Stack title="Bring in a vendor's list" isCard>
      <Field label="Vendor">
        <Input value={name} onChange={(_, { value }) => setName(value)} />
      </Field>
      <PickFile label="Take the list" accept=".csv,.tsv,.txt,.xlsx" onFile={(file) => void take(file)} />
      {list && (
        <>
          <span>
            {list.offers.length} offers, {list.refused.length} rows that yield none.
          </span>
          <Quiet>Columns understood as: {list.columns || "no heads, read row by row"}</Quiet>
          {list.refused.slice(0, 8).map(({ row, text, reason }) => (
            <Quiet key={row}>
              row {row}: {text.slice(0, 60)} ({reason})
            </Quiet>
          ))}
          <StepButton step={bringInOffersStep(book, list)} appearance="primary" then={() => setList(null)} />
          <Button onClick={() => setList(null)}>Leave it</Button>
        </>
      )}
    </Stack>
  );
}
