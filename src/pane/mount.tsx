import { FluentProvider, Spinner } from "@fluentui/react-components";
import { createRoot } from "react-dom/client";
import type { Host } from "../hosts/host.js";
import { WithBench } from "./bench.js";
import { Pane } from "./Pane.js";
import type { Services } from "./services.js";
import { THEMES } from "./theme.js";
import { useScheme } from "./useScheme.js";

function Root(props: { host: Host; services: Services }) {
  return (
    <FluentProvider theme={THEMES[useScheme()]} style={{ minHeight: "100%" }}>
      <WithBench {...props} waiting={<Spinner label="Reading the workbook" />}>
        <Pane />
      </WithBench>
    </FluentProvider>
  );
}

/**
 * Puts the side pane into an element; the same in Excel and on the page.
 *
 * @returns Takes it out again.
 */
export function mountPane(element: HTMLElement, host: Host, services: Services): () => void {
  const root = createRoot(element);
  root.render(<Root host={host} services={services} />);
  return () => root.unmount();
}
