import { makeStyles, tokens } from "@fluentui/react-components";
import { figuresOf } from "../card/cardTexts.js";
import { rowAsCorrected, type UnderstoodLine, type UnderstoodPart } from "./lineByLine.js";

const useStyles = makeStyles({ text: { whiteSpace: "pre-wrap", color: tokens.colorNeutralForeground2 } });

/** A line in its own writing with its number. */
export function LineText({ line }: Pick<UnderstoodLine, "line">) {
  return (
    <span className={useStyles().text}>
      {line.number}: {line.text}
    </span>
  );
}

/** What became of a line: its parts with their figures, a heading or note, or why it is unclear. */
export function Became({ line, parts }: UnderstoodLine) {
  if (line.became === "unclear") return <div>unclear: {line.reason}</div>;
  if (line.became === "heading or note") return <div>heading or note</div>;
  if (parts.length === 0) return <div>part of {line.parts.join(", ")}</div>;
  return parts.map((part) => <Figures key={part.index} understood={part} />);
}

function Figures({ understood }: { understood: UnderstoodPart }) {
  const { part, corrected } = understood;
  const row = rowAsCorrected(understood);
  return (
    <div>
      <strong>{part.designator}</strong> {part.kind} {figuresOf({ ...row, type: null })}
      {corrected && " (checked by you)"}
      {row.unsure && ` (${row.unsure})`}
    </div>
  );
}
