import { Button, Checkbox } from "@fluentui/react-components";
import { type ReactNode, useState } from "react";
import { setStops } from "../commands/papers.js";
import type { ProjectsRow } from "../core/index.js";
import { useBench } from "./bench.js";
import { Row, Stack } from "./kit/Stack.js";

/** After a break of an hour the stops of the set are asked anew. */
const BREAK = 60 * 60 * 1000;

/**
 * Asks the stops of the set once a sitting, before anything else is shown, and anew after an hour's break and whenever
 * the power was on.
 */
export function Sitting(props: { set: ProjectsRow | null; children: ReactNode }) {
  const { services, sitting } = useBench();
  const [ticked, setTicked] = useState<readonly string[]>([]);
  const stops = setStops(props.set);
  const now = services.now().getTime();
  const isOpen = sitting.current.set === props.set?.short && now - sitting.current.last < BREAK;
  const [, redraw] = useState(0);
  const begin = () => {
    sitting.current = { set: props.set?.short ?? null, last: services.now().getTime() };
    redraw(now);
  };
  if (isOpen) {
    sitting.current.last = now;
    return (
      <>
        {props.children}
        <Button
          onClick={() => {
            sitting.current.last = 0;
            setTicked([]);
            redraw(now);
          }}
        >
          The power was on
        </Button>
      </>
    );
  }
  const tick = (stop: string, on: boolean) =>
    setTicked(on ? [...ticked, stop] : ticked.filter((each) => each !== stop));
  return (
    <Stack title="Before a hand goes in" isCard>
      {stops.map((stop) => (
        <Checkbox
          key={stop}
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
