import { Button, makeStyles, tokens } from "@fluentui/react-components";
import { useState } from "react";
import { type SheetPair, sayPairsStep } from "../../commands/sameParts.js";
import type { PairAnswer } from "../../core/index.js";
import { useBench } from "../bench.js";
import { Quiet, Row, Stack } from "../kit/Stack.js";

const useStyles = makeStyles({
  list: { listStyle: "none", margin: 0, padding: 0 },
  item: {
    display: "flex",
    flexDirection: "column",
    gap: "4px",
    padding: "8px 0",
    borderBottom: `1px solid ${tokens.colorNeutralStroke3}`,
  },
  differs: { borderLeft: `4px solid ${tokens.colorStatusWarningBorder2}`, paddingLeft: "8px" },
});

/** As many pairs as are drawn at first. */
const SHOWN = 60;

/** Pairs below each other: both names and writings, how sure, what speaks for it, where the lists differ. */
export function PairList({ title, pairs }: { title: string; pairs: readonly SheetPair[] }) {
  const styles = useStyles();
  const [shown, setShown] = useState(SHOWN);
  if (pairs.length === 0) return null;
  return (
    <Stack title={`${title}: ${pairs.length}`} isCard>
      <ul className={styles.list}>
        {pairs.slice(0, shown).map((pair) => (
          <li key={pair.row.at} className={styles.item}>
            <Pair pair={pair} />
          </li>
        ))}
      </ul>
      {pairs.length > shown && <Button onClick={() => setShown(pairs.length)}>Show {pairs.length - shown} more</Button>}
    </Stack>
  );
}

function Pair({ pair }: { pair: SheetPair }) {
  const styles = useStyles();
  const { one, other, row, state } = pair;
  const { howSure, sureness, because, differs } = row.values;
  const percent = sureness === null ? "" : `, ${Math.round(sureness * 100)} %`;
  return (
    <>
      <div>
        <strong>
          {one.designator} = {other.designator}
        </strong>{" "}
        {state === "open"
          ? `${howSure ?? ""}${percent}`
          : state === "same part"
            ? "confirmed by you"
            : "refused by you"}
      </div>
      <Quiet>
        {one.document}: {one.printed}
      </Quiet>
      <Quiet>
        {other.document}: {other.printed}
      </Quiet>
      {differs && <div className={styles.differs}>The lists differ: {differs}</div>}
      {state === "open" && because && <Quiet>For it: {because}</Quiet>}
      <Answers pair={pair} />
    </>
  );
}

/** What can be said of a pair; a step is made when it is clicked, for there may be hundreds of pairs. */
function Answers({ pair }: { pair: SheetPair }) {
  const { book, run } = useBench();
  const say = (said: PairAnswer | null) => void run(sayPairsStep(book, [pair], said));
  const names = `${pair.one.designator} and ${pair.other.designator}`;
  return (
    <Row>
      {pair.state === "open" ? (
        <>
          <Button aria-label={`Same part: ${names}`} onClick={() => say("same part")}>
            Same part
          </Button>
          <Button aria-label={`Another part: ${names}`} onClick={() => say("another part")}>
            Another part
          </Button>
        </>
      ) : (
        <Button aria-label={`Take back: ${names}`} onClick={() => say(null)}>
          Take back
        </Button>
      )}
    </Row>
  );
}
