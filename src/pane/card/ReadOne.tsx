import { Button, Field, Input, makeStyles, tokens } from "@fluentui/react-components";
import { useRef, useState } from "react";
import { rulesOf } from "../../commands/book.js";
import type { ViewRow } from "../../commands/openSheet.js";
import { logReadingStep } from "../../commands/readings.js";
import { KINDS, type PARTS_SHEET, readReading, workOut } from "../../core/index.js";
import { useBench } from "../bench.js";
import { Row, Stack } from "../kit/Stack.js";
import { logTime } from "../when.js";
import { figuresOf } from "./cardTexts.js";

type PartRow = ViewRow<typeof PARTS_SHEET>;
type InPlace = "in place" | "lifted";

const useStyles = makeStyles({
  large: { fontSize: "24px", lineHeight: "30px", fontWeight: 600, minHeight: "30px" },
  quiet: { color: tokens.colorNeutralForeground2 },
});

/** The key that changes between in place and lifted: on the number keys, and no unit's letter. */
const LIFT_KEY = "*";

const plain = (designator: string | null) => (designator ?? "").replace(/[-\s]/g, "").toUpperCase();

/** One reading at a time: the verdict stands there before Enter, and Enter goes on to the next part. */
export function ReadOne({ rows, first }: { rows: readonly PartRow[]; first: PartRow }) {
  const styles = useStyles();
  const { book, run, services, say } = useBench();
  const [designator, setDesignator] = useState(first.values.designator ?? "");
  const [typed, setTyped] = useState("");
  const [inPlace, setInPlace] = useState<InPlace>("in place");
  const [accuracy, setAccuracy] = useState("1");
  const input = useRef<HTMLInputElement>(null);
  const row = rows.find(({ values }) => plain(values.designator) === plain(designator)) ?? null;
  const meter = Number(accuracy) / 100 || null;
  const seen = row && previewOf(row, typed, inPlace, meter, rulesOf(book, row.values.project));
  const log = async () => {
    if (!row || !seen?.text) return;
    try {
      const taken = { text: typed, inPlace, accuracy: meter, when: logTime(services.now()) };
      await run(logReadingStep(book, row, taken, seen.verdict));
    } catch (error) {
      say({ kind: "problem", text: String(error) });
      return;
    }
    const next = rows[rows.indexOf(row) + 1];
    if (next) setDesignator(next.values.designator ?? "");
    setTyped("");
    input.current?.focus();
  };
  return (
    <Stack title="Read a part" isCard>
      <Field label="Designator" validationMessage={row || !designator ? undefined : `No ${designator} in this section`}>
        <Input value={designator} onChange={(_, { value }) => setDesignator(value)} />
      </Field>
      {row && <div className={styles.quiet}>{figuresOf(row.values)}</div>}
      <Field
        label={`Reading, ${inPlace}`}
        hint={`${LIFT_KEY} changes between in place and lifted; open, short and jumps count too`}
      >
        <Input
          input={{ ref: input }}
          value={typed}
          onChange={(_, { value }) => setTyped(value.replace(LIFT_KEY, ""))}
          onKeyDown={(event) => {
            if (event.key === LIFT_KEY) setInPlace(inPlace === "lifted" ? "in place" : "lifted");
            if (event.key === "Enter") void log();
          }}
          contentAfter={seen?.text ? <span>{seen.text}</span> : undefined}
        />
      </Field>
      <div className={styles.large} aria-live="polite">
        {seen?.verdict ?? seen?.problem ?? ""}
      </div>
      <Row>
        <Button appearance="primary" disabled={!seen?.text} onClick={() => void log()}>
          Log the reading
        </Button>
        <Button onClick={() => setInPlace(inPlace === "lifted" ? "in place" : "lifted")}>
          {inPlace === "lifted" ? "It is in place" : "A lead is lifted"}
        </Button>
      </Row>
      <Field label="The meter is good to, in %">
        <Input type="number" value={accuracy} onChange={(_, { value }) => setAccuracy(value)} />
      </Field>
    </Stack>
  );
}

type Preview = { readonly text: string | null; readonly verdict: string | null; readonly problem: string | null };

/** What a reading would say, before it is logged. */
function previewOf(
  row: PartRow,
  typed: string,
  inPlace: InPlace,
  accuracy: number | null,
  inForce: Parameters<typeof workOut>[1],
): Preview {
  if (typed.trim() === "") return { text: null, verdict: null, problem: null };
  try {
    const kind = KINDS.find((each) => each === row.values.kind) ?? "other";
    const { text } = readReading(typed, row.values.value, kind);
    const worked = workOut({ ...row.values, reading: text, inPlace, accuracy, verdict: null }, inForce);
    return { text, verdict: worked.verdict ?? null, problem: null };
  } catch (error) {
    return { text: null, verdict: null, problem: error instanceof Error ? error.message : String(error) };
  }
}
