import { Combobox, Field, Option } from "@fluentui/react-components";
import { useState } from "react";
import { joinable, joinStep, leaveAsideStep } from "../../commands/joinParts.js";
import { otherRows, partsOnce } from "../../commands/once.js";
import type { ViewRow } from "../../commands/openSheet.js";
import { type PARTS_SHEET, readOtherList } from "../../core/index.js";
import { useBench } from "../bench.js";
import { Quiet, Row, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";

type PartRow = ViewRow<typeof PARTS_SHEET>;

/** The same part in the other list of its set: what it says there, which rating is heeded; or the way to pair it by hand. */
export function OtherList({ row }: { row: PartRow }) {
  const { book } = useBench();
  const others = otherRows(book).get(row.values) ?? [];
  const choices = joinable(book, row);
  if (others.length === 0 && choices.length === 0) return null;
  return (
    <Stack title="Same part in the other list" isCard>
      {others.map(({ values }) => (
        <div key={values.id}>
          <strong>{values.designator}</strong> in {values.document}: <Quiet>{values.printed}</Quiet>
        </div>
      ))}
      {others.length > 0 && !partsOnce(book).includes(row) && (
        <Quiet>It is counted and ordered at its row in the other list.</Quiet>
      )}
      <Sayings row={row} />
      {others.length === 0 && <PairByHand row={row} choices={choices} />}
    </Stack>
  );
}

const RATINGS = ["watts", "volts"];

/** What the other list says differently, or says alone; a rating can be left aside. */
function Sayings({ row }: { row: PartRow }) {
  const { book } = useBench();
  const says = readOtherList(row.values.otherList).flatMap(({ id, says }) => says.map((saying) => ({ id, ...saying })));
  return says.map(({ id, field, text, leftAside }) => (
    <Row key={`${id} ${field}`}>
      <span>
        It says {field} {text}
        {leftAside && ", left aside by you"}
      </span>
      {RATINGS.includes(field) && (
        <StepButton
          step={leaveAsideStep(book, row, id, field, !leftAside)}
          label={leftAside ? `Heed ${text}` : `Leave ${text} aside`}
        />
      )}
    </Row>
  ));
}

function PairByHand({ row, choices }: { row: PartRow; choices: readonly PartRow[] }) {
  const { book, run } = useBench();
  const [typed, setTyped] = useState("");
  const wanted = typed.toLowerCase();
  const nameOf = ({ values }: PartRow) => `${values.designator}: ${values.printed ?? values.value ?? ""}`;
  const found = choices.filter((each) => nameOf(each).toLowerCase().includes(wanted));
  return (
    <Field label="Pair it by hand" hint="Its name in the other list, if you know it">
      <Combobox
        value={typed}
        placeholder="not paired"
        onChange={(event) => setTyped(event.target.value)}
        onBlur={() => setTyped("")}
        onOptionSelect={(_, { optionValue }) => {
          const other = choices.find(({ values }) => values.id === optionValue);
          if (other) void run(joinStep(book, row, other));
        }}
      >
        {found.slice(0, MOST).map((each) => (
          <Option key={each.at} value={each.values.id ?? ""} text={nameOf(each)}>
            {nameOf(each)}
          </Option>
        ))}
      </Combobox>
    </Field>
  );
}

/** As many choices as are listed before typing narrows them. */
const MOST = 80;
