import { Checkbox, makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { type KeyboardEvent, useState } from "react";
import { counted } from "../../commands/step.js";
import { Stack } from "../kit/Stack.js";
import { SHOWN, Turn } from "../kit/Turn.js";
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

/**
 * A list line by line: its own writing, and how it was understood; lines with a problem first. Arrow keys go from line to
 * line. A long list is shown in parts: the one with the chosen line, until the person turns to another.
 */
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
  const [turned, turn] = useState<{ readonly chosen: number | null; readonly from: number } | null>(null);
  const at = lines.findIndex(({ line }) => line.number === props.chosen);
  const from = turned && turned.chosen === props.chosen ? turned.from : Math.max(0, at - (at % SHOWN));
  return (
    <Stack title={props.title}>
      <Checkbox
        label={`Only ${counted(first.length, "line")} with something unsure`}
        checked={onlyUnsure}
        onChange={(_, { checked }) => {
          setOnlyUnsure(checked === true);
          turn(null);
        }}
      />
      <ol className={styles.list} onKeyDown={goWithArrows}>
        {lines.slice(from, from + SHOWN).map((understood) => {
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
      <Turn from={from} count={lines.length} turnTo={(from) => turn({ chosen: props.chosen, from })} />
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
