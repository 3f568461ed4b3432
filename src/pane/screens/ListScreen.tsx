import { Button, Field, Textarea } from "@fluentui/react-components";
import { useState } from "react";
import { type KeptDocument, textFromLines } from "../../commands/linesAgain.js";
import { listSource, type Patience, pastedSource, type Source } from "../../commands/previewList.js";
import { PARTS_SHEET } from "../../core/index.js";
import { useBench } from "../bench.js";
import { PartNumbers } from "../card/PartNumbers.js";
import { ReadAgain } from "../card/ReadAgain.js";
import { PickFile } from "../kit/PickFile.js";
import { Row, Stack } from "../kit/Stack.js";
import { useWork, Working } from "../kit/Working.js";
import { type Taken, Understood } from "../preview/Understood.js";
import type { ScreenProps } from "../screens.js";

/** Paste or drop a list, see line by line how it was understood, write it to the sheet. */
export function ListScreen({ go }: ScreenProps) {
  const { book, host, say, services } = useBench();
  const [taken, setTaken] = useState<Taken | null>(null);
  const [text, setText] = useState("");
  const [isOver, setOver] = useState(false);
  const { work, busy } = useWork("Stopped. The list was not read.");
  const take = (from: (patience: Patience) => Promise<Source>, rest: Omit<Taken, "source">) =>
    void busy(async (patience) => {
      setTaken({ source: await from(patience), ...rest });
      say(null);
    });
  const takeFile = (file: File) =>
    take(async (patience) => listSource(services.read, file.name, new Uint8Array(await file.arrayBuffer()), patience), {
      file,
      again: null,
    });
  const takeText = (text: string, again: KeptDocument | null) =>
    take((patience) => pastedSource(services.read, text, patience), { file: null, again });
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
        <Button appearance="primary" onClick={() => takeText(text, null)}>
          See how it is understood
        </Button>
        <PickFile label="Take a file" accept=".txt,.csv,.tsv,.md,.xlsx,.pdf,image/*" onFile={takeFile} />
      </Row>
      {work && <Working work={work} />}
      <ReadAgain onPick={(kept) => takeText(textFromLines(book, kept), kept)} />
      <PartNumbers />
    </Stack>
  );
}
