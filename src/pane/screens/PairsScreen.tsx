import { Button, Dropdown, Field, Option } from "@fluentui/react-components";
import { useState } from "react";
import { listsOf, otherListsStep } from "../../commands/joinParts.js";
import { aloneIn, compareStep, pairsOf, type SheetPair, sayPairsStep, toConfirm } from "../../commands/sameParts.js";
import { counted } from "../../commands/step.js";
import { useBench } from "../bench.js";
import { PairList } from "../card/PairList.js";
import { Quiet, Row, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";
import type { ScreenProps } from "../screens.js";
import { setInHand } from "../useSet.js";

/** How sure a pair has to be so that it is confirmed with the others: the words and their least figure. */
const LEAST: Readonly<Record<string, number>> = { "sure (80 % and more)": 0.8, "likely (50 % and more)": 0.5, any: 0 };
const FIRST = Object.keys(LEAST)[0]!;

/** Two lists of one set side by side: which part is which, what speaks for it, where the lists differ, and your word on it. */
export function PairsScreen({ go }: ScreenProps) {
  const bench = useBench();
  const short = setInHand(bench)?.short ?? null;
  const lists = listsOf(bench.book, short);
  const pairs = pairsOf(bench.book, short);
  if (lists.length < 2) {
    return (
      <Stack title="Same part in both lists">
        <Quiet>This set has one list. Bring in its second list under another name, and they are compared here.</Quiet>
        <Row>
          <Button onClick={() => go("list")}>Bring in a parts list</Button>
        </Row>
      </Stack>
    );
  }
  const renew = otherListsStep(bench.book);
  return (
    <Stack title="Same part in both lists">
      <Quiet>
        {lists.join(" and ")} number the same set differently. A pair that you confirm is counted, read and ordered
        once.
      </Quiet>
      <Row>
        <Compare short={short} isAgain={pairs.length > 0} />
        {renew && <StepButton step={renew} />}
      </Row>
      {pairs.length > 0 && <Compared short={short} pairs={pairs} />}
    </Stack>
  );
}

/** Comparing takes a while with long lists: it starts with a click, and says that it works. */
function Compare({ short, isAgain }: { short: string | null; isAgain: boolean }) {
  const { book, run } = useBench();
  const [isBusy, setBusy] = useState(false);
  const compare = async () => {
    setBusy(true);
    await new Promise((shown) => setTimeout(shown));
    await run(compareStep(book, short));
    setBusy(false);
  };
  return (
    <Button appearance={isAgain ? "secondary" : "primary"} disabled={isBusy} onClick={() => void compare()}>
      {isBusy ? "Comparing" : isAgain ? "Compare again" : "Compare the lists"}
    </Button>
  );
}

function Compared({ short, pairs }: { short: string | null; pairs: readonly SheetPair[] }) {
  const { book } = useBench();
  const [least, setLeast] = useState(FIRST);
  const of = (state: SheetPair["state"]) => pairs.filter((pair) => pair.state === state);
  const [open, confirmed, refused] = [of("open"), of("same part"), of("another part")];
  const differing = [...open, ...confirmed].filter(({ row }) => row.values.differs !== null);
  const agreeing = (of: readonly SheetPair[]) => of.filter((pair) => !differing.includes(pair));
  const alone = aloneIn(book, short);
  return (
    <>
      <div>
        {counted(confirmed.length, "pair")} confirmed, {open.length} open, {refused.length} refused;{" "}
        {counted(alone.length, "part")} in one list alone.
      </div>
      {open.length > 0 && (
        <>
          <Field label="Confirm together what is">
            <Dropdown
              value={least}
              selectedOptions={[least]}
              onOptionSelect={(_, { optionValue }) => setLeast(optionValue ?? FIRST)}
            >
              {Object.keys(LEAST).map((each) => (
                <Option key={each}>{each}</Option>
              ))}
            </Dropdown>
          </Field>
          <Row>
            <StepButton
              appearance="primary"
              step={sayPairsStep(book, toConfirm(pairs, LEAST[least] ?? 1), "same part")}
            />
          </Row>
        </>
      )}
      <PairList title="The lists differ" pairs={differing} />
      <PairList title="Open" pairs={agreeing(open)} />
      <PairList title="Confirmed" pairs={agreeing(confirmed)} />
      <PairList title="Another part" pairs={refused} />
      {alone.length > 0 && (
        <Stack title={`In one list alone: ${alone.length}`} isCard>
          <Quiet>Pair one by hand on its card in Parts, if you know its partner.</Quiet>
          {alone.map(({ part, designator, document, printed }) => (
            <div key={part}>
              <strong>{designator}</strong> in {document}: {printed}
            </div>
          ))}
        </Stack>
      )}
    </>
  );
}
