import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { useEffect, useRef } from "react";
import type { LineReading } from "../../core/index.js";
import { Frame, type StepThrough } from "./Frame.js";

const useStyles = makeStyles({
  line: {
    display: "block",
    minWidth: "100%",
    padding: "1px 8px",
    border: "none",
    background: "none",
    color: "inherit",
    fontFamily: tokens.fontFamilyMonospace,
    fontSize: "14px",
    textAlign: "left",
    whiteSpace: "pre",
    cursor: "pointer",
  },
  chosen: {
    outline: `2px solid ${tokens.colorCompoundBrandStroke}`,
    outlineOffset: "-2px",
    backgroundColor: tokens.colorNeutralBackground1Selected,
    fontWeight: 700,
  },
});

/** Lines drawn before and after the chosen one: a long list stays quick. */
const AROUND = 150;

/** The source's own lines in the order they stand, the chosen one framed; choosing one chooses its reading. */
export function TextView(props: {
  lines: readonly LineReading[];
  chosen: number;
  choose: (line: number) => void;
  step: StepThrough;
}) {
  const styles = useStyles();
  const chosenLine = useRef<HTMLButtonElement>(null);
  const at = props.lines.findIndex(({ number }) => number === props.chosen);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another line chosen is what scrolls
  useEffect(() => chosenLine.current?.scrollIntoView({ block: "nearest" }), [props.chosen]);
  return (
    <Frame name="Lines of the list" step={props.step}>
      {props.lines.slice(Math.max(0, at - AROUND), at + AROUND).map(({ number, text }) => (
        <button
          key={number}
          ref={number === props.chosen ? chosenLine : null}
          type="button"
          tabIndex={-1}
          className={mergeClasses(styles.line, number === props.chosen && styles.chosen)}
          aria-pressed={number === props.chosen}
          onClick={() => props.choose(number)}
        >
          {text}
        </button>
      ))}
    </Frame>
  );
}
