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
 * @param label In place of the step's own name, where the place says the rest.
 */
export function StepButton(props: {
  step: Step;
  label?: string;
  appearance?: ButtonProps["appearance"];
  then?: () => void;
}) {
  const { run } = useBench();
  const [isAsking, setAsking] = useState(false);
  const [isBusy, setBusy] = useState(false);
  const { step } = props;
  const go = async (agreed: boolean) => {
    setAsking(false);
    setBusy(true);
    await run(step, agreed);
    setBusy(false);
    props.then?.();
  };
  if (isAsking) {
    return <AskFirst overwrites={step.overwrites} onYes={() => void go(true)} onNo={() => setAsking(false)} />;
  }
  return (
    <Button
      appearance={props.appearance ?? "secondary"}
      disabled={isBusy || !doesSomething(step)}
      onClick={() => (step.overwrites.length > 0 ? setAsking(true) : void go(false))}
    >
      {isBusy ? "Working" : (props.label ?? step.name)}
    </Button>
  );
}

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
