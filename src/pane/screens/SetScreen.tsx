import { Checkbox, Dropdown, Field, Input, Option } from "@fluentui/react-components";
import { closeSetStep } from "../../commands/closeSet.js";
import { editSetStep } from "../../commands/editSet.js";
import { LIVE_KEYS } from "../../commands/liveFormula.js";
import { doesSomething } from "../../commands/step.js";
import { liveStep, valuesStep } from "../../commands/values.js";
import { PARTS_SHEET, POLICY_WORDS, PROJECT_STATES, type ProjectsRow } from "../../core/index.js";
import { useBench } from "../bench.js";
import { Quiet, Row, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";
import { setInHand } from "../useSet.js";

type Key = keyof ProjectsRow;

const TEXTS: readonly { readonly key: Key; readonly label: string; readonly hint?: string }[] = [
  { key: "name", label: "What it is" },
  { key: "chassis", label: "Chassis and run" },
  { key: "era", label: "Year", hint: "It bears on what an unstated part was" },
  { key: "owner", label: "Owner" },
  { key: "changedBefore", label: "Changed before you" },
];

const FIGURES: typeof TEXTS = [
  { key: "voltsLabel", label: "Line volts on the label" },
  { key: "voltsNow", label: "Line volts at your outlet" },
  { key: "hertz", label: "Line hertz" },
];

const TICKS: typeof TEXTS = [
  { key: "liveChassis", label: "Live chassis: one side of the line is tied to the metal" },
  { key: "pictureTube", label: "Has a picture tube" },
];

/** The set card: what it is, its line, how far to go. */
export function SetScreen() {
  const bench = useBench();
  const set = setInHand(bench);
  if (!set) return <Quiet>No set yet. Bring in a parts list, and its set gets a card here.</Quiet>;
  const write = (key: Key, value: string | number | boolean) =>
    void bench.run(editSetStep(bench.book, set.short, { [key]: value }));
  return (
    <Stack title="Set card">
      <strong>Do not plug it in yet.</strong>
      {TEXTS.map(({ key, label, hint }) => (
        <Field key={key} label={label} hint={hint}>
          <Input defaultValue={String(set[key] ?? "")} onBlur={(event) => write(key, event.target.value)} />
        </Field>
      ))}
      {FIGURES.map(({ key, label }) => (
        <Field key={key} label={label}>
          <Input
            type="number"
            defaultValue={String(set[key] ?? "")}
            onBlur={(event) => write(key, event.target.value === "" ? "" : Number(event.target.value))}
          />
        </Field>
      ))}
      {TICKS.map(({ key, label }) => (
        <Checkbox
          key={key}
          label={label}
          checked={set[key] === true}
          onChange={(_, { checked }) => write(key, checked === true ? "yes" : "")}
        />
      ))}
      <Choice
        label="How far to go"
        value={set.howFar && POLICY_WORDS[set.howFar]}
        words={Object.values(POLICY_WORDS)}
        pick={(word) => write("howFar", word)}
      />
      {set.short && set.state !== "closed" && <StepButton step={closeSetStep(bench.book, set.short)} />}
      {set.state !== "closed" && <AsValues short={set.short} />}
      <Choice
        label="State"
        value={set.state}
        words={PROJECT_STATES.filter((state) => state !== "closed")}
        pick={(word) => write("state", word)}
      />
    </Stack>
  );
}

/** Worked-out columns as plain values, all of the set or the one in the hand, and back. */
function AsValues({ short }: { short: string | null }) {
  const { book, place } = useBench();
  if (!book.parts) return null;
  const { parts } = book;
  const rows = parts.rows.filter(({ values }) => values.project === short);
  const column = place.sheet === parts.name ? LIVE_KEYS.find((key) => parts.places[key] === place.column) : undefined;
  const all = valuesStep(parts, rows);
  const one = column && valuesStep(parts, rows, [column]);
  const back = liveStep(book, rows);
  return (
    <Stack title="Answers as values" isCard>
      <Quiet>
        As plain values they show in any program, and change no more when a rule does. A reading or a use given in the
        pane still renews its row.
      </Quiet>
      <Row>
        {doesSomething(all) && <StepButton step={all} />}
        {column && one && doesSomething(one) && (
          <StepButton step={one} label={`Only the column ${PARTS_SHEET.columns[column].head}`} />
        )}
        {doesSomething(back) && <StepButton step={back} />}
      </Row>
    </Stack>
  );
}

function Choice(props: {
  label: string;
  value: string | null;
  words: readonly string[];
  pick: (word: string) => void;
}) {
  return (
    <Field label={props.label}>
      <Dropdown
        value={props.value ?? ""}
        selectedOptions={props.value ? [props.value] : []}
        onOptionSelect={(_, { optionValue }) => optionValue && props.pick(optionValue)}
      >
        {props.words.map((word) => (
          <Option key={word}>{word}</Option>
        ))}
      </Dropdown>
    </Field>
  );
}
