import { Button, Field, Input, makeStyles, tokens } from "@fluentui/react-components";
import { type KeyboardEvent, useEffect, useRef, useState } from "react";
import { rulesOf } from "../../commands/book.js";
import type { ViewRow } from "../../commands/openSheet.js";
import { logReadingsStep, slipText, type Taken, type Told, tellsOf } from "../../commands/readings.js";
import { kindNamed, type PARTS_SHEET, type RulesInForce, readingsText, readReadings } from "../../core/index.js";
import { textOf, useBench } from "../bench.js";
import { Row, Stack } from "../kit/Stack.js";
import { logTime } from "../when.js";
import { BENCH_KEYS, isState, nextState } from "./benchKeys.js";
import { figuresOf, toldText } from "./cardTexts.js";
import { DriftPicture } from "./DriftPicture.js";

type PartRow = ViewRow<typeof PARTS_SHEET>;
type InPlace = Taken["inPlace"];

const useStyles = makeStyles({
  large: { fontSize: "24px", lineHeight: "30px", fontWeight: 600 },
  input: {
    width: "100%",
    minWidth: 0,
    minHeight: "44px",
    "& input": { fontSize: "24px", lineHeight: "30px", width: "100%", minWidth: 0 },
  },
  unit: { whiteSpace: "nowrap" },
  quiet: { color: tokens.colorNeutralForeground2 },
});

/** One reading at a time: what it says stands there before Enter, and Enter goes on to the next part. */
export function ReadOne(props: {
  row: PartRow | null;
  designator: string;
  /** What is said where the section has no such part. */
  noSuch: string;
  onDesignator: (typed: string) => void;
  /** Goes so many parts on (or back) without a reading. */
  step: (by: 1 | -1) => void;
  /** After a reading was logged. */
  next: () => void;
  /** The meter's accuracy as a ratio. */
  accuracy: number | null;
}) {
  const { row, step } = props;
  const styles = useStyles();
  const { book, run, services } = useBench();
  const [typed, setTyped] = useState("");
  const [inPlace, setInPlace] = useState<InPlace>("in place");
  const input = useRef<HTMLInputElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: only another part starts anew, not its row read again
  useEffect(() => {
    setTyped("");
    setInPlace(row?.values.lifted ? "lifted" : "in place");
  }, [row?.at]);
  const seen = row && previewOf(row, typed, inPlace, props.accuracy, rulesOf(book, row.values.project));
  const log = async () => {
    if (!seen?.taken) return;
    await run(logReadingsStep(book, [seen.taken], logTime(services.now())));
    setTyped("");
    props.next();
    input.current?.focus();
  };
  const turn = () => setInPlace(inPlace === "lifted" ? "in place" : "lifted");
  const onKey = (event: KeyboardEvent) => {
    const isEmpty = typed.trim() === "";
    const does: Readonly<Record<string, (() => void) | false>> = {
      [BENCH_KEYS.lift]: turn,
      [BENCH_KEYS.state]: isState(typed) && (() => setTyped(nextState(typed))),
      [BENCH_KEYS.next]: isEmpty && (() => step(1)),
      [BENCH_KEYS.back]: isEmpty && (() => step(-1)),
    };
    const act = event.key === "Enter" ? () => void log() : does[event.key];
    if (!act) return;
    event.preventDefault();
    act();
  };
  return (
    <Stack title="Read a part" isCard>
      <Field
        label="Designator"
        hint="A figure alone keeps the letter"
        validationMessage={row || !props.designator ? undefined : props.noSuch}
      >
        <Input
          value={props.designator}
          onChange={(_, { value }) => props.onDesignator(value)}
          onFocus={(event) => event.target.select()}
          onKeyDown={(event) => event.key === "Enter" && input.current?.focus()}
        />
      </Field>
      {row && <div>{figuresOf(row.values)}</div>}
      <Field label={`Reading, ${inPlace}`} hint="* lifted, / open, short or jumps, + next, − back, Enter logs">
        <Input
          className={styles.input}
          input={{ ref: input }}
          value={typed}
          onChange={(_, { value }) => setTyped(value)}
          onKeyDown={onKey}
          contentAfter={
            seen?.taken ? <span className={styles.unit}>{readingsText(seen.taken.readings)}</span> : undefined
          }
        />
      </Field>
      <div aria-live="polite">
        <div className={styles.large}>{seen?.told?.verdict ?? ""}</div>
        <div className={styles.quiet}>{seen?.told ? toldText(seen.told) : (seen?.problem ?? "")}</div>
        {seen?.taken && <strong>{slipText(seen.taken)}</strong>}
      </div>
      {row && <DriftPicture row={{ ...row.values, ...seen?.told }} />}
      <Row>
        <Button appearance="primary" disabled={!seen?.taken} onClick={() => void log()}>
          Log the reading
        </Button>
        <Button onClick={turn}>{inPlace === "lifted" ? "It is in place" : "A lead is lifted"}</Button>
      </Row>
    </Stack>
  );
}

type Preview = { readonly taken: Taken | null; readonly told: Told | null; readonly problem: string | null };

/** What a reading would say, before it is logged. */
function previewOf(
  row: PartRow,
  typed: string,
  inPlace: InPlace,
  accuracy: number | null,
  inForce: RulesInForce,
): Preview {
  if (typed.trim() === "") return { taken: null, told: null, problem: null };
  try {
    const readings = readReadings(typed, row.values.value, kindNamed(row.values.kind));
    const taken = { row, readings, inPlace, accuracy, remark: null };
    return { taken, told: tellsOf(taken, inForce), problem: null };
  } catch (error) {
    return { taken: null, told: null, problem: textOf(error) };
  }
}
