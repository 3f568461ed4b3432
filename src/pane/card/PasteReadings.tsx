import { Button, Field, makeStyles, mergeClasses, Textarea, tokens } from "@fluentui/react-components";
import { useDeferredValue, useState } from "react";
import { rulesOf } from "../../commands/book.js";
import type { ViewRow } from "../../commands/openSheet.js";
import { type PasteDefaults, type PasteLine, pastePreview } from "../../commands/pasteReadings.js";
import { logReadingsStep, slipText } from "../../commands/readings.js";
import { type PARTS_SHEET, readingsText } from "../../core/index.js";
import { useBench } from "../bench.js";
import { Quiet, Row, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";
import { logTime } from "../when.js";
import { toldText } from "./cardTexts.js";

const useStyles = makeStyles({
  list: { listStyle: "none", margin: 0, padding: 0, maxHeight: "420px", overflowY: "auto" },
  item: { padding: "6px 0 6px 8px", borderBottom: `1px solid ${tokens.colorNeutralStroke3}` },
  unclear: { borderLeft: `4px solid ${tokens.colorStatusWarningBorder2}` },
  text: { color: tokens.colorNeutralForeground2, whiteSpace: "pre-wrap" },
});

/** Many readings at once: what each line means stands there before all are written in one step. */
export function PasteReadings(props: {
  rows: readonly ViewRow<typeof PARTS_SHEET>[];
  defaults: PasteDefaults;
  done: () => void;
}) {
  const styles = useStyles();
  const { book, services } = useBench();
  const [text, setText] = useState("");
  const { rows, defaults } = props;
  const inForce = rulesOf(book, rows[0]?.values.project ?? null);
  const shown = useDeferredValue(text);
  const lines = shown.trim() === "" ? [] : pastePreview(shown, rows, defaults, inForce);
  const unclear = lines.filter(({ became }) => became === "not understood");
  const others = lines.filter(({ became }) => became !== "not understood" && became !== "empty");
  const taken = lines.flatMap((line) => line.taken ?? []);
  const first = defaults.inOrder[0]?.values.designator;
  return (
    <Stack title="Paste readings" isCard>
      <Field
        label="One part a line, or a table with heads"
        hint={`R12 612k lifted, C4 open, C5 0.05 leak 3. Figures alone take the parts in order${first ? `, from ${first} on` : ""}. A line that does not say it was read ${defaults.inPlace}.`}
      >
        <Textarea value={text} rows={5} resize="vertical" onChange={(_, { value }) => setText(value)} />
      </Field>
      {lines.length > 0 && (
        <div aria-live="polite">
          {taken.length} understood, {unclear.length} not
        </div>
      )}
      <ul className={styles.list}>
        {[...unclear, ...others].map((line) => (
          <li key={line.number} className={mergeClasses(styles.item, line.taken === null && styles.unclear)}>
            <div className={styles.text}>
              {line.number}: {line.text}
            </div>
            <Means line={line} />
          </li>
        ))}
      </ul>
      {unclear.length > 0 && taken.length > 0 && <Quiet>Lines that are not understood stay here to be mended.</Quiet>}
      <Row>
        <StepButton
          step={logReadingsStep(book, taken, logTime(services.now()))}
          appearance="primary"
          then={() => (unclear.length > 0 ? setText(withoutReadings(lines)) : props.done())}
        />
        <Button onClick={props.done}>Leave it</Button>
      </Row>
    </Stack>
  );
}

/** What is left to be mended; an understood line leaves its place empty, so that bare figures keep their turn. */
const withoutReadings = (lines: readonly PasteLine[]) =>
  lines.map(({ became, text }) => (became === "reading" ? "" : text)).join("\n");

/** What one line was understood as. */
function Means({ line: { became, taken, told, reason } }: { line: PasteLine }) {
  if (became === "heads") return <div>heads of the columns. {reason}</div>;
  if (became === "section") return <div>the section of the lines below</div>;
  if (!taken || !told) return <div>{reason}</div>;
  const { section, designator } = taken.row.values;
  return (
    <div>
      <strong>{designator}</strong> {section}: {readingsText(taken.readings)} {taken.inPlace}
      {taken.remark && `, ${taken.remark}`}
      <div>{[told.verdict, toldText(told)].filter(Boolean).join("; ")}</div>
      <strong>{slipText(taken)}</strong>
    </div>
  );
}
