import { Button, Field, Input, Radio, RadioGroup, Textarea } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import { projectOf, rulesOf, valuesOf } from "../../commands/book.js";
import { bringInListStep, type Corrected } from "../../commands/bringInList.js";
import { listsOf } from "../../commands/joinParts.js";
import { type KeptDocument, textFromLines } from "../../commands/linesAgain.js";
import { partNumbersOf } from "../../commands/partNumbers.js";
import { listSource, pastedSource, previewList, type Source } from "../../commands/previewList.js";
import { type CorrectedCells, type DocumentReading, PARTS_SHEET } from "../../core/index.js";
import { textOf, useBench } from "../bench.js";
import { PartNumbers } from "../card/PartNumbers.js";
import { ReadAgain } from "../card/ReadAgain.js";
import { PickFile } from "../kit/PickFile.js";
import { Quiet, Row, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";
import { SideBySide } from "../preview/SideBySide.js";
import type { ScreenProps } from "../screens.js";
import { setInHand } from "../useSet.js";

type M = "thousand" | "million" | null;

/** Paste or drop a list, see line by line how it was understood, write it to the sheet. */
export function ListScreen({ go }: ScreenProps) {
  const { book, host, say, services } = useBench();
  const [taken, setTaken] = useState<Taken | null>(null);
  const [text, setText] = useState("");
  const [isOver, setOver] = useState(false);
  const take = async (file: File | null, from: () => Promise<Source>, again: KeptDocument | null = null) => {
    try {
      setTaken({ source: await from(), file, again });
      say(null);
    } catch (error) {
      setTaken(null);
      say({ kind: "problem", text: textOf(error) });
    }
  };
  const takeFile = (file: File) =>
    void take(file, async () => listSource(services.read, file.name, new Uint8Array(await file.arrayBuffer())));
  const showParts = async (isSecond: boolean) => {
    await host.select({ sheet: book.parts?.name ?? PARTS_SHEET.name, row: book.parts?.end ?? 1, column: 1 });
    go(isSecond ? "pairs" : "parts");
  };
  if (taken) return <Understood {...taken} back={() => setTaken(null)} done={(isSecond) => void showParts(isSecond)} />;
  return (
    <Stack title="Bring in a parts list">
      <Field
        label="Paste it here, or drop a file"
        hint="As it is printed: headings, notes and all. R1 may stand in every section."
      >
        <Textarea
          rows={10}
          value={text}
          resize="vertical"
          onChange={(_, { value }) => setText(value)}
          onDragOver={(event) => {
            event.preventDefault();
            setOver(true);
          }}
          onDragLeave={() => setOver(false)}
          onDrop={(event) => {
            event.preventDefault();
            setOver(false);
            const file = event.dataTransfer.files[0];
            if (file) takeFile(file);
          }}
          style={isOver ? { outline: "2px dashed" } : undefined}
        />
      </Field>
      <Row>
        <Button appearance="primary" onClick={() => void take(null, () => pastedSource(services.read, text))}>
          See how it is understood
        </Button>
        <PickFile label="Take a file" accept=".txt,.csv,.tsv,.md,.xlsx,.pdf,image/*" onFile={takeFile} />
      </Row>
      <ReadAgain
        onPick={(kept) => void take(null, () => pastedSource(services.read, textFromLines(book, kept)), kept)}
      />
      <PartNumbers />
    </Stack>
  );
}

/** A list as it was given: its lines, the file that can be shown beside them, and its document in Lines when it is read again. */
type Taken = { readonly source: Source; readonly file: File | null; readonly again: KeptDocument | null };

function Understood(props: Taken & { back: () => void; done: (isSecond: boolean) => void }) {
  const bench = useBench();
  const set = props.again ? projectOf(bench.book, props.again.project) : setInHand(bench);
  const [capitalM, setM] = useState<M>(null);
  const [short, setShort] = useState(set?.short ?? "");
  const [name, setName] = useState(set?.name ?? "");
  const [document, setDocument] = useState(props.again?.document ?? (set ? "" : "factory list"));
  const [year, setYear] = useState(set?.era ?? "");
  const { source } = props;
  const found = useMemo(
    () =>
      understood(() =>
        previewList(source, {
          capitalM,
          era: Number(year) || null,
          inForce: rulesOf(bench.book, short),
          partNumbers: partNumbersOf(bench.book),
        }),
      ),
    [source, capitalM, year, bench.book, short],
  );
  const [corrected, setCorrected] = useState<Corrected>(new Map());
  const correct = (index: number, cells: CorrectedCells) =>
    setCorrected((known) => new Map(known).set(index, { ...known.get(index), ...cells }));
  const isNamed = short.trim() !== "" && name.trim() !== "" && document.trim() !== "";
  const isSecond = listsOf(bench.book, short).some((each) => each !== document);
  const known = valuesOf(bench.book.projects).some((each) => each.short === short);
  return (
    <Stack title="Understood as">
      <Button onClick={props.back}>Back to the text</Button>
      {"problem" in found ? (
        <Quiet>{found.problem}</Quiet>
      ) : (
        <>
          <Field label="M means" hint="Before about 1940 often thousand; where MEG is printed too, thousand">
            <RadioGroup value={capitalM ?? "list"} onChange={(_, { value }) => setM(asM(value))}>
              <Radio value="list" label="as the list shows" />
              <Radio value="thousand" label="thousand" />
              <Radio value="million" label="million" />
            </RadioGroup>
          </Field>
          <Field label="Short name of the set" hint="Stands in every id: HL-14">
            <Input value={short} onChange={(_, { value }) => setShort(value.trim().slice(0, 6))} />
          </Field>
          {!known && (
            <Field label="What it is">
              <Input value={name} onChange={(_, { value }) => setName(value)} />
            </Field>
          )}
          <Field label="Year of the set" hint="Bears on what an unstated part was">
            <Input value={year} onChange={(_, { value }) => setYear(value)} />
          </Field>
          <Field label="Name of this document" hint="The same name as before reads it again">
            <Input value={document} onChange={(_, { value }) => setDocument(value)} />
          </Field>
          {isNamed ? (
            <StepButton
              appearance="primary"
              step={bringInListStep(
                bench.book,
                found.reading,
                { short, set: name || short, document, card: { era: year } },
                corrected,
              )}
              then={() => props.done(isSecond)}
            />
          ) : (
            <Quiet>Name the set and the document, then {found.reading.parts.length} parts can be written.</Quiet>
          )}
          <SideBySide {...props} reading={found.reading} corrected={corrected} correct={correct} />
        </>
      )}
    </Stack>
  );
}

const asM = (value: string): M => (value === "thousand" || value === "million" ? value : null);

function understood(read: () => DocumentReading): { reading: DocumentReading } | { problem: string } {
  try {
    return { reading: read() };
  } catch (error) {
    return { problem: textOf(error) };
  }
}
