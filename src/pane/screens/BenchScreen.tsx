import { Button, Dropdown, Field, Input, Option } from "@fluentui/react-components";
import { useEffect, useState } from "react";
import { partsOnce } from "../../commands/once.js";
import type { ViewRow } from "../../commands/openSheet.js";
import { canBeRead, isToRead } from "../../commands/overview.js";
import type { PARTS_SHEET } from "../../core/index.js";
import { useBench } from "../bench.js";
import { namedRow } from "../card/benchKeys.js";
import { DriftTable } from "../card/DriftTable.js";
import { LeadsLifted } from "../card/LeadsLifted.js";
import { PasteReadings } from "../card/PasteReadings.js";
import { ReadOne } from "../card/ReadOne.js";
import { RowPicker } from "../card/RowPicker.js";
import { Quiet, Stack } from "../kit/Stack.js";
import { Sitting } from "../sitting.js";
import { rowInHand, setInHand } from "../useSet.js";

type PartRow = ViewRow<typeof PARTS_SHEET>;

const sectionOf = (row: PartRow) => row.values.section ?? "no section";

/** As many names as are told in one sentence. */
const MOST_NAMED = 8;

/** Designator, reading, Enter, next; the section holds until it is changed, for R1 stands in each of them. */
export function BenchScreen() {
  const bench = useBench();
  const set = setInHand(bench);
  const rows = (bench.book.parts?.rows ?? []).filter(({ values }) => !set || values.project === set.short);
  if (rows.length === 0) return <Quiet>No parts yet. Readings stand with the parts of a list.</Quiet>;
  return (
    <Sitting set={set}>
      <BenchOfSet key={set?.short} rows={rows} short={set?.short ?? null} />
    </Sitting>
  );
}

/** The section and the part in the hand: those of the row selected in the sheet, until others are chosen here. */
function useHand(rows: readonly PartRow[]) {
  const { host, book, place, ...bench } = useBench();
  const selected = rowInHand({ book, place });
  const first = selected ?? rows.find(({ values }) => isToRead(values)) ?? rows[0]!;
  const [section, setSection] = useState(sectionOf(first));
  const [typed, setTyped] = useState(first.values.designator ?? "");
  const [before, setBefore] = useState(first.values.designator);
  const show = (row: PartRow) => {
    setSection(sectionOf(row));
    setTyped(row.values.designator ?? "");
    setBefore(row.values.designator);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: follows the selection, not every new reading of the sheet
  useEffect(() => {
    if (selected && rows.includes(selected)) show(selected);
  }, [selected?.at]);
  const here = rows.filter((row) => sectionOf(row) === section);
  const take = (row: PartRow) => {
    show(row);
    const column = book.parts?.places.designator ?? 0;
    void host.select({ sheet: book.parts?.name ?? "Parts", row: row.at, column });
  };
  return { ...bench, section, here, typed, setTyped, take, row: namedRow(typed, here, before) };
}

/** That a section has no such part, and what would work: the sections that have it, or the names there are. */
function noSuchText(typed: string, elsewhere: readonly PartRow[], here: readonly PartRow[]): string {
  const inSections = elsewhere.filter((row) => namedRow(typed, [row], null)).map(sectionOf);
  const names = here.map(({ values }) => values.designator).filter(Boolean);
  const works =
    inSections.length > 0
      ? `It stands in ${[...new Set(inSections)].join(", ")}.`
      : `There are ${names.slice(0, MOST_NAMED).join(", ")}${names.length > MOST_NAMED ? " and more" : ""}.`;
  return `No ${typed} in this section. ${works}`;
}

function BenchOfSet({ rows, short }: { rows: readonly PartRow[]; short: string | null }) {
  const { section, here, typed, setTyped, take, row } = useHand(rows);
  const [accuracy, setAccuracy] = useState("1");
  const [isPasting, setPasting] = useState(false);
  const sections = [...new Set(rows.map(sectionOf))];
  const readable = here.filter(({ values }) => canBeRead(values));
  const { book } = useBench();
  const once = new Set(partsOnce(book));
  const toRead = here.filter((row) => once.has(row) && isToRead(row.values));
  const meter = Number(accuracy.replace(",", ".")) / 100 || null;
  const at = row ? readable.indexOf(row) : -1;
  const stepBy = (by: number) => {
    const next = readable[at + by];
    if (next) take(next);
  };
  const inOrder = readable.slice(Math.max(at, 0));
  return (
    <>
      <Field label="Section">
        <Dropdown
          value={section}
          selectedOptions={[section]}
          onOptionSelect={(_, { optionValue }) => {
            const members = rows.filter((each) => sectionOf(each) === optionValue);
            const [first] = [...members.filter(({ values }) => isToRead(values)), ...members];
            if (first) take(first);
          }}
        >
          {sections.map((each) => (
            <Option key={each}>{each}</Option>
          ))}
        </Dropdown>
      </Field>
      {isPasting ? (
        <PasteReadings
          rows={rows}
          defaults={{ section: here[0]?.values.section ?? null, inOrder, inPlace: "in place", accuracy: meter }}
          done={() => setPasting(false)}
        />
      ) : (
        <ReadOne
          row={row}
          designator={typed}
          noSuch={noSuchText(
            typed,
            rows.filter((each) => !here.includes(each)),
            here,
          )}
          onDesignator={setTyped}
          step={stepBy}
          next={() => stepBy(1)}
          accuracy={meter}
        />
      )}
      {!isPasting && <Button onClick={() => setPasting(true)}>Paste many readings</Button>}
      <Field label="The meter is good to, in %">
        <Input inputMode="decimal" value={accuracy} onChange={(_, { value }) => setAccuracy(value)} />
      </Field>
      <LeadsLifted rows={rows.filter((row) => once.has(row) && row.values.lifted)} />
      <Stack title={`${toRead.length} to read in ${section}`} isCard>
        <RowPicker
          rows={toRead}
          onGo={take}
          say={({ values }) => [values.value, values.verdict].filter(Boolean).join(": ")}
        />
      </Stack>
      <DriftTable short={short} />
    </>
  );
}
