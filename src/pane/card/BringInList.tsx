import { Button, Combobox, Field, Option } from "@fluentui/react-components";
import { useState } from "react";
import { valuesOf } from "../../commands/book.js";
import { bringInOffersStep } from "../../commands/bringInOffers.js";
import { columnsOf, likelyVendor, type TakenList, type TriedList, takenListStep } from "../../commands/longLists.js";
import { useBench } from "../bench.js";
import { PickFile } from "../kit/PickFile.js";
import { Quiet, Row, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";
import { useWork, Working } from "../kit/Working.js";
import { countText } from "../useLists.js";
import { logDay } from "../when.js";
import { ListColumns } from "./ListColumns.js";
import { RefusedRows } from "./RefusedRows.js";
import { TakenCard } from "./TakenCard.js";

/** Refused rows shown before a list is brought in. */
const SHOWN = 8;

/** A file that is looked at: whose list it may be, its columns as corrected (null: as guessed), and what comes of that. */
type Looked = { readonly vendor: string; readonly columns: string | null; readonly tried: TriedList };

/** Brings a vendor's list in: read, shown with its columns, corrected where they are wrong, then written or kept. */
export function BringInList({ onTaken }: { onTaken: () => void }) {
  const { book, run, say, services } = useBench();
  const [looked, look] = useState<Looked | null>(null);
  const [taken, setTaken] = useState<TakenList | null>(null);
  const { work, isBusy, busy } = useWork("Stopped. Nothing was kept.");
  const lookAt = async (vendor: string, columns: string | null) =>
    look({ vendor, columns, tried: await services.lists.tryOut(vendor, columns) });
  const correct = (vendor: string, columns: string | null) => void busy(() => lookAt(vendor, columns));
  const open = (file: File) =>
    busy(async (patience) => {
      say(null);
      setTaken(null);
      look(null);
      await services.lists.open(file, patience);
      const guessed = await services.lists.tryOut("", null);
      const names = guessed.columns.map(({ name }) => name);
      const vendor = likelyVendor(book, file.name, names);
      await lookAt(vendor, columnsOf(book, vendor));
    });
  const take = ({ vendor, columns }: Looked) =>
    busy(async (patience) => {
      say(null);
      const found = await services.lists.take(vendor, logDay(services.now()), columns, patience);
      setTaken(found);
      look(null);
      onTaken();
      await run(await takenListStep(book, services.lists, found));
    });
  if (work) {
    return (
      <Stack title="Bring in a vendor's list" isCard>
        <Working work={work} />
      </Stack>
    );
  }
  return (
    <>
      <Stack title="Bring in a vendor's list" isCard>
        <PickFile label="Take the list" accept=".csv,.tsv,.txt,.xlsx" onFile={(file) => void open(file)} />
        {looked && (
          <Understood
            looked={looked}
            isBusy={isBusy}
            onVendor={(vendor) => correct(vendor, columnsOf(book, vendor) ?? looked.columns)}
            onColumns={(columns) => correct(looked.vendor, columns)}
            onTake={() => void take(looked)}
            onLeave={() => look(null)}
          />
        )}
      </Stack>
      {taken && <TakenCard taken={taken} close={() => setTaken(null)} />}
    </>
  );
}

function Understood(props: {
  looked: Looked;
  /** True while it is looked at anew, as corrected. */
  isBusy: boolean;
  onVendor: (vendor: string) => void;
  onColumns: (columns: string) => void;
  onTake: () => void;
  onLeave: () => void;
}) {
  const { book, services } = useBench();
  const { vendor, tried } = props.looked;
  const { offers, refused, currency, understood } = tried;
  const list = { vendor, listDate: logDay(services.now()), currency, offers, refused, columns: understood };
  return (
    <>
      <PickVendor key={vendor} vendor={vendor} onPick={props.onVendor} />
      <span>
        {tried.isWhole ? "" : `Of ${countText(tried.tried)} rows tried: `}
        {countText(offers.length)} offers, {countText(refused.length)} rows that yield none.
      </span>
      <RefusedRows rows={refused.slice(0, SHOWN)} />
      <strong>Columns understood as</strong>
      <Quiet>Correct what is wrong: it is remembered for this vendor.</Quiet>
      <ListColumns columns={tried.columns} onCorrect={props.onColumns} />
      {!tried.isWhole && (
        <Quiet>
          {countText(tried.rows)} lines are too many for the sheet. The list is kept in this browser, and the offers
          that come into play for your parts are written to Offers.
        </Quiet>
      )}
      <Row>
        {vendor.trim() === "" ? (
          <Quiet>Name the vendor first.</Quiet>
        ) : tried.isWhole ? (
          <StepButton
            step={bringInOffersStep(book, list)}
            isOff={props.isBusy}
            appearance="primary"
            then={props.onLeave}
          />
        ) : (
          <Button appearance="primary" disabled={props.isBusy} onClick={props.onTake}>
            Read all {countText(tried.rows)} lines
          </Button>
        )}
        <Button onClick={props.onLeave}>Leave it</Button>
      </Row>
    </>
  );
}

/** Whose list it is: a vendor known before, whose columns are remembered, or a new one. */
function PickVendor({ vendor, onPick }: { vendor: string; onPick: (vendor: string) => void }) {
  const { book } = useBench();
  const [typed, setTyped] = useState(vendor);
  const known = valuesOf(book.vendors).flatMap((row) => (row.vendor ? [row.vendor] : []));
  const pick = (name: string) => {
    if (name.trim() !== vendor) onPick(name.trim());
  };
  return (
    <Field label="Vendor" hint="Name it once: its columns are remembered under this name">
      <Combobox
        freeform
        value={typed}
        selectedOptions={known.filter((name) => name === typed)}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={() => pick(typed)}
        onOptionSelect={(_, { optionValue }) => {
          setTyped(optionValue ?? typed);
          pick(optionValue ?? typed);
        }}
      >
        {known.map((name) => (
          <Option key={name} value={name}>
            {name}
          </Option>
        ))}
      </Combobox>
    </Field>
  );
}
