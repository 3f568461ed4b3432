import { Button, Field, Textarea } from "@fluentui/react-components";
import { useState } from "react";
import { bringInNumbersStep, partNumbersOf } from "../../commands/partNumbers.js";
import { listSource, pastedSource, type Source } from "../../commands/previewList.js";
import { counted } from "../../commands/step.js";
import { type PartNumberReading, readPartNumbers } from "../../core/index.js";
import { textOf, useBench } from "../bench.js";
import { PickFile } from "../kit/PickFile.js";
import { Quiet, Row, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";

type Taken = { readonly reading: PartNumberReading; readonly source: string };

/** As many lines as are shown before they are written. */
const SHOWN = 5;

/** What part numbers stand for, for lists that give numbers in place of values: pasted or from a file, kept in the workbook. */
export function PartNumbers() {
  const { book, say, services } = useBench();
  const [text, setText] = useState("");
  const [taken, setTaken] = useState<Taken | null>(null);
  const take = async (source: string, from: () => Promise<Source>) => {
    try {
      setTaken({ reading: readPartNumbers((await from()).lines), source });
      say(null);
    } catch (error) {
      say({ kind: "problem", text: textOf(error) });
    }
  };
  return (
    <Stack title="Part numbers" isCard>
      <Quiet>
        For a list that gives part numbers in place of values. {counted(partNumbersOf(book).size, "number")} in this
        workbook.
      </Quiet>
      <Field label="Paste numbers and what they stand for" hint="A line each: 61-0745  2.2 meg 1/2 W">
        <Textarea rows={3} value={text} resize="vertical" onChange={(_, { value }) => setText(value)} />
      </Field>
      <Row>
        <Button onClick={() => void take("pasted", () => pastedSource(services.read, text))}>See the numbers</Button>
        <PickFile
          label="Take a table"
          accept=".txt,.csv,.tsv,.xlsx"
          onFile={(file) =>
            void take(file.name, async () =>
              listSource(services.read, file.name, new Uint8Array(await file.arrayBuffer())),
            )
          }
        />
      </Row>
      {taken && <TakenNumbers taken={taken} done={() => setTaken(null)} />}
    </Stack>
  );
}

function TakenNumbers({ taken: { reading, source }, done }: { taken: Taken; done: () => void }) {
  const { book } = useBench();
  const { rows, refused } = reading;
  return (
    <>
      {rows.slice(0, SHOWN).map(({ number, description }) => (
        <div key={number}>
          <strong>{number}</strong> {description}
        </div>
      ))}
      {rows.length > SHOWN && <Quiet>and {rows.length - SHOWN} more</Quiet>}
      {refused.slice(0, SHOWN).map(({ line, text }) => (
        <Quiet key={line}>
          line {line} gives no number or nothing beside it: {text.slice(0, 60)}
        </Quiet>
      ))}
      <Row>
        <StepButton step={bringInNumbersStep(book, reading, source)} appearance="primary" then={done} />
        <Button onClick={done}>Leave it</Button>
      </Row>
    </>
  );
}
