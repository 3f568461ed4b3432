import { makeStyles, tokens } from "@fluentui/react-components";

const useStyles = makeStyles({
  mark: { display: "inline-flex", alignItems: "center", gap: "6px", fontWeight: 600 },
  /** The colour stands around the drawing: high contrast forces that of a box, never that of a drawing itself. */
  drawing: { display: "inline-flex", color: tokens.colorBrandForeground1, flexShrink: 0 },
});

/** The shape of each action: keep an open circle, test a half, replace a full one, lift an arc, ask a question mark. */
const SHAPES: Readonly<Record<string, React.ReactNode>> = {
  keep: <circle cx="8" cy="8" r="6" fill="none" stroke="currentColor" strokeWidth="2" />,
  test: (
    <>
      <circle cx="8" cy="8" r="6" fill="none" stroke="currentColor" strokeWidth="2" />
      <path d="M8 2a6 6 0 0 1 0 12z" fill="currentColor" />
    </>
  ),
  replace: <circle cx="8" cy="8" r="7" fill="currentColor" />,
  lift: <path d="M2 13 Q8 -3 14 13" fill="none" stroke="currentColor" strokeWidth="2" />,
  check: <path d="M2 9l4 4 8-10" fill="none" stroke="currentColor" strokeWidth="2" />,
  ask: (
    <text x="8" y="14" textAnchor="middle" fontSize="16" fontWeight="700" fill="currentColor">
      ?
    </text>
  ),
};

/** What is to be done with a part: a shape and its word, for colour never speaks alone. */
export function ActionMark({ action }: { action: string | null }) {
  const styles = useStyles();
  return (
    <span className={styles.mark}>
      <span className={styles.drawing}>
        <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
          {SHAPES[action ?? "ask"]}
        </svg>
      </span>
      {action ?? "not decided"}
    </span>
  );
}
