import { Button, type ButtonProps, makeStyles, tokens } from "@fluentui/react-components";
import { useState } from "react";
import { doesSomething, type Overwrite, type Step } from "../../commands/step.js";
import { useBench } from "../bench.js";

const useStyles = makeStyles({
  ask: {
    border: `1px solid ${tokens.colorNeutralStroke1}`,
    borderRadius: tokens.borderRadiusMedium,
    padding: "8px",
    display: "flex",
    flexDirection: "column",
    gap: "8px",
  },
  list: { margin: 0, paddingLeft: "20px", maxHeight: "160px", overflowY: "auto" },
  row: { display: "flex", gap: "8px", flexWrap: "wrap" },
});

/**
 * A button that says what it will do. Where cells of the user's would change, it lists them and asks first.
 *
 * @param step The step, or how to prepare it where that takes long; then `label` says what it does.
 * @param label In place of the step's own name, where the place says the rest.
 * @param isOff True where it can't be done just now.
 */
export function StepButton(props: {
  step: Step | (() => Step);
  label?: string;
  isOff?: boolean;
  appearance?: ButtonProps["appearance"];
  then?: () => void;
}) {
  const { run } = useBench();
  const [asking, ask] = useState<Step | null>(null);
  const [isBusy, setBusy] = useState(false);
  const prepared = typeof props.step === "function" ? null : props.step;
  const go = async (step: Step, agreed: boolean) => {
    ask(null);
    setBusy(true);
    await run(step, agreed);
    setBusy(false);
    props.then?.();
  };
  const press = async () => {
    setBusy(true);
    await shown();
    const step = typeof props.step === "function" ? props.step() : props.step;
    setBusy(false);
    if (step.overwrites.length > 0) ask(step);
    else await go(step, false);
  };
  if (asking) {
    return <AskFirst overwrites={asking.overwrites} onYes={() => void go(asking, true)} onNo={() => ask(null)} />;
  }
  return (
    <Button
      appearance={props.appearance ?? "secondary"}
      disabled={isBusy || props.isOff || (prepared !== null && !doesSomething(prepared))}
      onClick={() => void press()}
    >
      {isBusy ? "Working" : (props.label ?? prepared?.name)}
    </Button>
  );
}

/** Resolves once what was changed on the page can be seen: what is done then may hold the page up. */
const shown = () => new Promise<void>((done) => requestAnimationFrame(() => setTimeout(done)));

function AskFirst(props: { overwrites: readonly Overwrite[]; onYes: () => void; onNo: () => void }) {
  const styles = useStyles();
  return (
    <section className={styles.ask} aria-label="Cells of yours that would change">
      <span>{props.overwrites.length} of your cells would change:</span>
      <ul className={styles.list}>
        {props.overwrites.map(({ place, row, head, was, will }) => (
          <li key={`${place.row}/${place.column}`}>
            {row}, {head}: {was} becomes {will}
          </li>
        ))}
      </ul>
      <div className={styles.row}>
        <Button appearance="primary" onClick={props.onYes}>
          Change them
        </Button>
        <Button onClick={props.onNo}>Leave them</Button>
      </div>
    </section>
  );
}
