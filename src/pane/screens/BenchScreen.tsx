import { Dropdown, Field, Option } from "@fluentui/react-components";
import { useState } from "react";
import type { ViewRow } from "../../commands/openSheet.js";
import { isToRead } from "../../commands/overview.js";
import { leadsBackStep } from "../../commands/readings.js";
import type { PARTS_SHEET } from "../../core/index.js";
import { useBench } from "../bench.js";
import { DriftTable } from "../card/DriftTable.js";
import { ReadOne } from "../card/ReadOne.js";
import { RowPicker } from "../card/RowPicker.js";
import { Quiet, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";
import { Sitting } from "../sitting.js";
import { rowInHand, setInHand } from "../useSet.js";

type PartRow = ViewRow<typeof PARTS_SHEET>;

const sectionOf = (row: PartRow) => row.values.section ?? "no section";

/** Designator, reading, Enter, next; the section holds until it is changed, for R1 stands in each of them. */
export function BenchScreen() {
  const bench = useBench();
  const set = setInHand(bench);
  const rows = (bench.book.parts?.rows ?? []).filter(({ values }) => !set || values.project === set.short);
  const hand = rowInHand(bench);
  const [picked, setSection] = useState<string | null>(null);
  const sections = [...new Set(rows.map(sectionOf))];
  const section = picked ?? (hand && sectionOf(hand)) ?? sections[0];
  if (rows.length === 0 || section === undefined)
    return <Quiet>No parts yet. Readings stand with the parts of a list.</Quiet>;
  const here = rows.filter((row) => sectionOf(row) === section);
  const toRead = here.filter(({ values }) => isToRead(values));
  const lifted = rows.filter(({ values }) => values.lifted);
  return (
    <Sitting set={set}>
      <Field label="Section">
        <Dropdown
          value={section}
          selectedOptions={[section]}
          onOptionSelect={(_, { optionValue }) => setSection(optionValue ?? null)}
        >
          {sections.map((each) => (
            <Option key={each}>{each}</Option>
          ))}
        </Dropdown>
      </Field>
      <ReadOne key={section} rows={here} first={hand && here.includes(hand) ? hand : (toRead[0] ?? here[0]!)} />
      {lifted.length > 0 && (
        <Stack title="Leads lifted" isCard>
          <RowPicker rows={lifted} say={({ values }) => values.reading ?? ""} />
          <StepButton step={leadsBackStep(bench.book, lifted)} label="All leads are back" />
        </Stack>
      )}
      <Stack title={`${toRead.length} to read here`} isCard>
        <RowPicker rows={toRead} say={({ values }) => [values.value, values.verdict].filter(Boolean).join(": ")} />
      </Stack>
      <DriftTable rows={rows.map(({ values }) => values)} />
    </Sitting>
  );
}
