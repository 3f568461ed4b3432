import { Checkbox, makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { type KeyboardEvent, useState } from "react";
import { counted } from "../../commands/step.js";
import { Stack } from "../kit/Stack.js";
import { Became, LineText } from "./LineView.js";
import type { UnderstoodLine } from "./lineByLine.js";

const useStyles = makeStyles({
  list: { listStyle: "none", margin: 0, padding: 0, maxHeight: "480px", overflowY: "auto" },
  item: { borderBottom: `1px solid ${tokens.colorNeutralStroke3}`, borderLeft: "4px solid transparent" },
  unsure: { borderLeftColor: tokens.colorStatusWarningBorder2, borderLeftStyle: "dashed" },
  chosen: { borderLeftColor: tokens.colorCompoundBrandStroke, borderLeftStyle: "solid", fontWeight: 600 },
  line: {
    display: "block",
    width: "100%",
    padding: "6px 0 6px 8px",
    border: "none",
    background: "none",
    color: "inherit",
    font: "inherit",
    textAlign: "left",
    cursor: "pointer",
  },
});

/** As many lines as are drawn at first: lines with a problem come first. */
const SHOWN = 300;

/** A list line by line: its own writing, and how it was understood; lines with a problem first. Arrow keys go from line to line. */
export function ListPreview(props: {
  title: string;
  lines: readonly UnderstoodLine[];
  chosen: number | null;
  choose: (line: number) => void;
}) {
  const styles = useStyles();
  const [onlyUnsure, setOnlyUnsure] = useState(false);
  const first = props.lines.filter(({ isUnsure }) => isUnsure);
  const lines = onlyUnsure ? first : [...first, ...props.lines.filter(({ isUnsure }) => !isUnsure)];
  return (
    <Stack title={props.title}>
      <Checkbox
        label={`Only ${counted(first.length, "line")} with something unsure`}
        checked={onlyUnsure}
        onChange={(_, { checked }) => setOnlyUnsure(checked === true)}
      />
      <ol className={styles.list} onKeyDown={goWithArrows}>
        {lines.slice(0, SHOWN).map((understood) => {
          const isChosen = understood.line.number === props.chosen;
          return (
            <li
              key={understood.line.number}
              className={mergeClasses(styles.item, understood.isUnsure && styles.unsure, isChosen && styles.chosen)}
            >
              <button
                type="button"
                className={styles.line}
                aria-pressed={isChosen}
                onClick={() => props.choose(understood.line.number)}
                onFocus={() => props.choose(understood.line.number)}
              >
                <LineText line={understood.line} />
                <Became {...understood} />
              </button>
            </li>
          );
        })}
      </ol>
      {lines.length > SHOWN && <span>and {lines.length - SHOWN} lines more</span>}
    </Stack>
  );
}

/** Up and down go to the line above and below. */
function goWithArrows(event: KeyboardEvent<HTMLElement>): void {
  const item = (event.target as HTMLElement).closest("li");
  const next =
    event.key === "ArrowDown"
      ? item?.nextElementSibling
      : event.key === "ArrowUp"
        ? item?.previousElementSibling
        : null;
  if (!next) return;
  event.preventDefault();
  next.querySelector("button")?.focus();
}
