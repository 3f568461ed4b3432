import { Button, Field, Input, makeStyles, tokens } from "@fluentui/react-components";
import { useState } from "react";
import { insertFormulaStep } from "../../commands/insertFormula.js";
import { useBench } from "../bench.js";
import type { ListedFunction } from "../functionListing.js";
import { Stack } from "../kit/Stack.js";

const useStyles = makeStyles({
  list: { listStyle: "none", margin: 0, padding: 0, display: "flex", flexDirection: "column", gap: "8px" },
  entry: {
    border: `1px solid ${tokens.colorNeutralStroke2}`,
    borderRadius: tokens.borderRadiusMedium,
    padding: "8px",
    display: "flex",
    flexDirection: "column",
    gap: "6px",
  },
  name: { fontWeight: 600, margin: 0, fontSize: "14px" },
  args: { margin: 0, paddingLeft: "18px", color: tokens.colorNeutralForeground2 },
});

/** Our cell functions: search, arguments, an example, and a button that puts it into the selected cell. */
export function FunctionsScreen() {
  const styles = useStyles();
  const { services } = useBench();
  const [wanted, setWanted] = useState("");
  const found = services.functions.filter((each) => matches(each, wanted));
  const chapters = [...new Set(found.map(({ chapter }) => chapter))];
  return (
    <>
      <Field label="Search the cell functions">
        <Input type="search" value={wanted} onChange={(_, { value }) => setWanted(value)} placeholder="nearest value" />
      </Field>
      {chapters.map((title) => (
        <Stack key={title} title={title}>
          <ul className={styles.list}>
            {found
              .filter(({ chapter }) => chapter === title)
              .map((each) => (
                <FunctionEntry key={each.id} listed={each} />
              ))}
          </ul>
        </Stack>
      ))}
      {found.length === 0 && <span>No function says "{wanted}". Try one word, such as volts.</span>}
    </>
  );
}

function matches(listed: ListedFunction, wanted: string): boolean {
  const text = `${listed.id} ${listed.chapter} ${listed.description ?? ""}`.toLowerCase();
  return wanted
    .toLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word));
}

function FunctionEntry({ listed }: { listed: ListedFunction }) {
  const styles = useStyles();
  const { host, run, say } = useBench();
  const example = exampleOf(listed);
  const put = async () => {
    if (example === null) return;
    const step = await insertFormulaStep(host, `=${example.call}`);
    if (step.overwrites.length > 0) say({ kind: "problem", text: "That cell holds something. Select an empty one." });
    else await run(step);
  };
  return (
    <li className={styles.entry}>
      <h3 className={styles.name}>LUG.{listed.id}</h3>
      <span>{firstLine(listed)}</span>
      <ul className={styles.args}>
        {listed.parameters.map((each) => (
          <li key={each.name}>
            {each.name}
            {each.optional ? " (may be left out)" : ""}: {each.description}
          </li>
        ))}
      </ul>
      {example && (
        <span>
          <code>={example.call}</code> gives {example.gives}
        </span>
      )}
      {example && <Button onClick={() => void put()}>Put into the selected cell</Button>}
    </li>
  );
}

/** The call and the answer of a function's example. */
function exampleOf({ example }: ListedFunction): { readonly call: string; readonly gives: string } | null {
  const [call, gives] = example?.split(" -> ") ?? [];
  return call && gives ? { call, gives } : null;
}

const firstLine = ({ description }: ListedFunction) => (description ?? "").split("\n")[0];
