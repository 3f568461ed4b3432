import { Button, Dropdown, Field, Input, makeStyles, Option } from "@fluentui/react-components";
import { useState } from "react";
import { cautionsOf, fittedStep, tickStopStep } from "../../commands/fit.js";
import { namesInLists } from "../../commands/once.js";
import type { ViewRow } from "../../commands/openSheet.js";
import { isToFit } from "../../commands/overview.js";
import type { PARTS_SHEET } from "../../core/index.js";
import { useBench } from "../bench.js";
import { Cautions } from "../card/Cautions.js";
import { figuresOf, newFigures } from "../card/cardTexts.js";
import { Quiet, Row, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";
import { Sitting } from "../sitting.js";
import { setInHand } from "../useSet.js";
import { logDay } from "../when.js";

const useStyles = makeStyles({ large: { fontSize: "24px", lineHeight: "30px", fontWeight: 600 } });

/** One section a sitting, one part at a time: where, old, new, its stops, the new part's reading. */
export function FitScreen() {
  const bench = useBench();
  const set = setInHand(bench);
  const [section, setSection] = useState<string | null>(null);
  const [skipped, setSkipped] = useState<readonly string[]>([]);
  const open = (bench.book.parts?.rows ?? []).filter(
    ({ values }) => isToFit(values) && (set === null || values.project === set.short),
  );
  const sections = [...new Set(open.map(({ values }) => values.section ?? "no section"))];
  const here = section ?? sections[0] ?? null;
  const inSection = open.filter(({ values }) => (values.section ?? "no section") === here);
  const row = inSection.find(({ values }) => !skipped.includes(values.id ?? "")) ?? inSection[0];
  if (!row || here === null) {
    return <Quiet>Nothing is in hand to fit. When parts come, note it in Order; they stand here then.</Quiet>;
  }
  return (
    <Sitting set={set}>
      <Field label="Section">
        <Dropdown
          value={here}
          selectedOptions={[here]}
          onOptionSelect={(_, { optionValue }) => setSection(optionValue ?? null)}
        >
          {sections.map((each) => (
            <Option key={each}>{each}</Option>
          ))}
        </Dropdown>
      </Field>
      <FitCard key={row.values.id} row={row} />
      <Row>
        <Button onClick={() => setSkipped([...skipped, row.values.id ?? ""])}>Leave it for later</Button>
        <Quiet>{inSection.length} to fit in this section</Quiet>
      </Row>
    </Sitting>
  );
}

function FitCard({ row }: { row: ViewRow<typeof PARTS_SHEET> }) {
  const styles = useStyles();
  const { book, run, services } = useBench();
  const [reading, setReading] = useState("");
  const { values } = row;
  const step = fittedStep(book, row, { when: logDay(services.now()), reading });
  return (
    <Stack title={[namesInLists(book)(row), values.place].filter(Boolean).join(", ")} isCard>
      <div>
        out: <span className={styles.large}>{figuresOf(values)}</span>
      </div>
      <div>
        in: <span className={styles.large}>{newFigures(values)}</span>
      </div>
      <Cautions
        cautions={cautionsOf(values)}
        ticked={(values.stopsSeen ?? "").split(/[\s,]+/)}
        onTick={(id, on) => void run(tickStopStep(book, row, id, on))}
      />
      <Field label="Reading of the new part">
        <Input value={reading} onChange={(_, { value }) => setReading(value)} placeholder={values.newValue ?? ""} />
      </Field>
      <StepButton step={step} appearance="primary" />
    </Stack>
  );
}
