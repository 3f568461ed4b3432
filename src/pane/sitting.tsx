import { Button, Checkbox, makeStyles, tokens } from "@fluentui/react-components";
import { type ReactNode, useEffect, useState } from "react";
import { setStops } from "../commands/papers.js";
import type { ProjectsRow } from "../core/index.js";
import { useBench } from "./bench.js";
import { Row, Stack } from "./kit/Stack.js";

/** After a break of an hour, in milliseconds, the stops of the set are asked anew. */
const BREAK = 60 * 60 * 1000;

const useStyles = makeStyles({
  work: { display: "flex", flexDirection: "column", gap: "12px", minWidth: 0 },
  /** A stop is read before it is ticked: its words are as dark as any. */
  stop: { "& label": { color: tokens.colorNeutralForeground1 } },
});

/**
 * Asks the stops of the set once a sitting, before anything else is shown, and anew after an hour's break and whenever
 * the power was on.
 */
export function Sitting(props: { set: ProjectsRow | null; children: ReactNode }) {
  const styles = useStyles();
  const { isOpen, begin, end, touch } = useSitting(props.set?.short ?? null);
  if (!isOpen) return <Stops set={props.set} begin={begin} />;
  return (
    <div className={styles.work} onPointerDownCapture={touch} onKeyDownCapture={touch}>
      {props.children}
      <Button onClick={end}>The power was on</Button>
    </div>
  );
}

/** Whether the sitting at a set goes on: a hand was at it within the hour. The clock is asked by itself, too. */
function useSitting(short: string | null) {
  const { services, sitting } = useBench();
  const [, redraw] = useState(0);
  const now = () => services.now().getTime();
  const isOpenAt = (time: number) => sitting.current.set === short && time - sitting.current.last < BREAK;
  const isOpen = isOpenAt(now());
  const leave = (last: number) => {
    sitting.current = { set: short, last };
    redraw((count) => count + 1);
  };
  useEffect(() => {
    if (!isOpen) return;
    const timer = setInterval(() => redraw((count) => count + 1), BREAK / 60);
    return () => clearInterval(timer);
  }, [isOpen]);
  const touch = (event: { stopPropagation: () => void; preventDefault: () => void }) => {
    if (isOpenAt(now())) {
      sitting.current.last = now();
      return;
    }
    event.preventDefault();
    event.stopPropagation();
    leave(0);
  };
  return { isOpen, begin: () => leave(now()), end: () => leave(0), touch };
}

function Stops({ set, begin }: { set: ProjectsRow | null; begin: () => void }) {
  const styles = useStyles();
  const [ticked, setTicked] = useState<readonly string[]>([]);
  const stops = setStops(set);
  const tick = (stop: string, on: boolean) =>
    setTicked(on ? [...ticked, stop] : ticked.filter((each) => each !== stop));
  return (
    <Stack title="Before a hand goes in" isCard>
      {stops.map((stop) => (
        <Checkbox
          key={stop}
          className={styles.stop}
          label={stop}
          checked={ticked.includes(stop)}
          onChange={(_, { checked }) => tick(stop, checked === true)}
        />
      ))}
      <Row>
        <Button appearance="primary" disabled={stops.some((stop) => !ticked.includes(stop))} onClick={begin}>
          All done: begin
        </Button>
        <Button onClick={begin}>I copy readings from paper</Button>
      </Row>
    </Stack>
  );
}
