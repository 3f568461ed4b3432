import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { openSampleStep } from "../../commands/sample/openSample.js";
import { textOf, useBench } from "../bench.js";
import { PickFile } from "../kit/PickFile.js";
import { Quiet, Stack } from "../kit/Stack.js";
import type { ScreenProps } from "../screens.js";
import { logDay } from "../when.js";

/** An empty workbook: what this is for, and the ways in. */
export function WelcomeScreen({ go }: ScreenProps) {
  const { host, reload, run, say, services } = useBench();
  const [isBusy, setBusy] = useState(false);
  const open = async () => {
    setBusy(true);
    await run(await openSampleStep(host, services.understand, logDay(services.now())));
    await host.select({ sheet: "Parts", row: 1, column: 1 });
    setBusy(false);
  };
  const openFile = async (file: File) => {
    try {
      await services.openWorkbook?.(file);
      await reload();
    } catch (error) {
      say({ kind: "problem", text: textOf(error) });
    }
  };
  return (
    <Stack>
      <p>From a factory parts list to an order: what each part was, what to fit in its place, and what to buy where.</p>
      <Button appearance="primary" disabled={isBusy} onClick={() => void open()}>
        {isBusy ? "Reading the sample's lists" : "Open the sample"}
      </Button>
      <Quiet>Three invented sets and the lists of three invented vendors.</Quiet>
      <Button onClick={() => go("list")}>Bring in a parts list</Button>
      {services.openWorkbook && (
        <PickFile label="Open a workbook (.xlsx)" accept=".xlsx" onFile={(file) => void openFile(file)} />
      )}
    </Stack>
  );
}
