import { Button } from "@fluentui/react-components";
import { Row } from "./Stack.js";

/** As many things of a long list as are drawn at once, so that it does not hold the page up. */
export const SHOWN = 200;

/** Turns to what stands before and after in a long list; nothing where all of it is shown. @param from Counted from 0. */
export function Turn({ from, count, turnTo }: { from: number; count: number; turnTo: (from: number) => void }) {
  if (count <= SHOWN) return null;
  const to = Math.min(from + SHOWN, count);
  return (
    <Row>
      <span>
        {from + 1} to {to} of {count}
      </span>
      <Button size="small" disabled={from === 0} onClick={() => turnTo(Math.max(0, from - SHOWN))}>
        Those before
      </Button>
      <Button size="small" disabled={to === count} onClick={() => turnTo(to)}>
        Those after
      </Button>
    </Row>
  );
}
