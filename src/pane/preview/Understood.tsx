import { Button, Field, Radio, RadioGroup } from "@fluentui/react-components";
import { useCallback, useMemo, useState } from "react";
import { projectOf, rulesOf } from "../../commands/book.js";
import { bringInListName, bringInListStep, type Corrected } from "../../commands/bringInList.js";
import { listsOf } from "../../commands/joinParts.js";
import type { KeptDocument } from "../../commands/linesAgain.js";
import { partNumbersOf } from "../../commands/partNumbers.js";
import type { Source } from "../../commands/previewList.js";
import type { CorrectedCells, ListAnswers } from "../../core/index.js";
import { useBench } from "../bench.js";
import { Quiet, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";
import { Working } from "../kit/Working.js";
import { setInHand } from "../useSet.js";
import { SideBySide } from "./SideBySide.js";
import { useReading } from "./useReading.js";
import { type Belongs, isNamed, WhereItBelongs } from "./WhereItBelongs.js";

type M = "thousand" | "million" | null;

/** A list as it was given: its lines, the file that can be shown beside them, and its document in Lines when it is read again. */
export type Taken = { readonly source: Source; readonly file: File | null; readonly again: KeptDocument | null };

/** How a list is understood, line by line, with what a person may say of it; below, the way into the sheet. */
export function Understood(props: Taken & { back: () => void; done: (isSecond: boolean) => void }) {
  const bench = useBench();
  const set = props.again ? projectOf(bench.book, props.again.project) : setInHand(bench);
  const [capitalM, setM] = useState<M>(null);
  const [belongs, setBelongs] = useState<Belongs>({
    short: set?.short ?? "",
    name: set?.name ?? "",
    year: set?.era ?? "",
    document: props.again?.document ?? (set ? "" : "factory list"),
  });
  const { source } = props;
  const { short, name, year, document } = belongs;
  const known = projectOf(bench.book, short);
  const answers = useMemo(
    (): ListAnswers => ({
      capitalM,
      era: Number(year) || null,
      inForce: rulesOf(bench.book, known?.short ?? null),
      partNumbers: partNumbersOf(bench.book),
    }),
    [capitalM, year, bench.book, known],
  );
  const { found, isCurrent, work } = useReading(source, answers);
  const [corrected, setCorrected] = useState<Corrected>(new Map());
  const correct = useCallback(
    (index: number, cells: CorrectedCells) =>
      setCorrected((before) => new Map(before).set(index, { ...before.get(index), ...cells })),
    [],
  );
  const target = { short, set: name || short, document, card: { era: year } };
  const isSecond = listsOf(bench.book, short).some((each) => each !== document);
  return (
    <Stack title="Understood as">
      <Button onClick={props.back}>Back to the text</Button>
      {work && <Working work={{ ...work, stop: props.back }} />}
      {found === null ? null : "problem" in found ? (
        <Quiet>{found.problem}</Quiet>
      ) : (
        <>
          <Field label="M means" hint="Before about 1940 often thousand; where MEG is printed too, thousand">
            <RadioGroup
              layout="horizontal"
              style={{ flexWrap: "wrap" }}
              value={capitalM ?? "list"}
              onChange={(_, { value }) => setM(asM(value))}
            >
              <Radio value="list" label="as the list shows" />
              <Radio value="thousand" label="thousand" />
              <Radio value="million" label="million" />
            </RadioGroup>
          </Field>
          <SideBySide
            source={source}
            file={props.file}
            reading={found.reading}
            corrected={corrected}
            correct={correct}
          />
          <Stack title="Where it belongs" isCard>
            <WhereItBelongs belongs={belongs} say={setBelongs} isKnown={known !== null} />
            {isNamed(belongs) ? (
              <StepButton
                appearance="primary"
                label={bringInListName(bench.book, found.reading, target)}
                step={() => bringInListStep(bench.book, found.reading, target, corrected)}
                isOff={!isCurrent}
                then={() => props.done(isSecond)}
              />
            ) : (
              <Quiet>Name the set and the document, then {found.reading.parts.length} parts can be written.</Quiet>
            )}
          </Stack>
        </>
      )}
    </Stack>
  );
}

const asM = (value: string): M => (value === "thousand" || value === "million" ? value : null);
