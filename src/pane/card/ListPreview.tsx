import { Checkbox, makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { useState } from "react";
import type { DocumentReading, LineReading, Part } from "../../core/index.js";
import { rowOfPart } from "../../core/index.js";
import { Stack } from "../kit/Stack.js";
import { figuresOf } from "./cardTexts.js";

const useStyles = makeStyles({
  list: { listStyle: "none", margin: 0, padding: 0, maxHeight: "480px", overflowY: "auto" },
  item: { padding: "6px 0 6px 8px", borderBottom: `1px solid ${tokens.colorNeutralStroke3}` },
  unclear: { borderLeft: `4px solid ${tokens.colorStatusWarningBorder2}` },
  text: { whiteSpace: "pre-wrap", color: tokens.colorNeutralForeground2 },
});

/** As many lines as are drawn at first: lines with a problem come first. */
const SHOWN = 300;

/** A list line by line: its own writing, and how it was understood; lines with a problem first. */
export function ListPreview({ reading }: { reading: DocumentReading }) {
  const styles = useStyles();
  const [onlyUnclear, setOnlyUnclear] = useState(false);
  const partsOf = new Map<number, Part[]>();
  for (const [index, part] of reading.parts.entries()) {
    const line = reading.lineOfPart[index] ?? 0;
    partsOf.set(line, [...(partsOf.get(line) ?? []), part]);
  }
  const doubtful = (line: LineReading) =>
    line.became === "unclear" || (partsOf.get(line.number) ?? []).some(({ warnings }) => warnings.length > 0);
  const first = reading.lines.filter(doubtful);
  const lines = onlyUnclear ? first : [...first, ...reading.lines.filter((line) => !doubtful(line))];
  return (
    <Stack title={`${reading.parts.length} parts in ${reading.lines.length} lines`}>
      {reading.questions.map((question) => (
        <strong key={question}>{question}</strong>
      ))}
      <Checkbox
        label={`Only the ${first.length} lines with something unsure`}
        checked={onlyUnclear}
        onChange={(_, { checked }) => setOnlyUnclear(checked === true)}
      />
      <ol className={styles.list}>
        {lines.slice(0, SHOWN).map((line) => (
          <li key={line.number} className={mergeClasses(styles.item, doubtful(line) && styles.unclear)}>
            <div className={styles.text}>
              {line.number}: {line.text}
            </div>
            <Became line={line} parts={partsOf.get(line.number) ?? []} />
          </li>
        ))}
      </ol>
      {lines.length > SHOWN && <span>and {lines.length - SHOWN} lines more</span>}
    </Stack>
  );
}

function Became({ line, parts }: { line: LineReading; parts: readonly Part[] }) {
  if (line.became === "unclear") return <div>unclear: {line.reason}</div>;
  if (line.became === "heading or note") return <div>heading or note</div>;
  if (parts.length === 0) return <div>part of {line.parts.join(", ")}</div>;
  return parts.map((part) => {
    const row = rowOfPart(part, "", []);
    return (
      <div key={`${part.section}${part.designator}${part.suffix}`}>
        <strong>{part.designator}</strong> {part.kind} {figuresOf({ ...row, type: null })}
        {row.unsure && ` (${row.unsure})`}
      </div>
    );
  });
}
