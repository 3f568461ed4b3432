import { Checkbox, makeStyles, tokens } from "@fluentui/react-components";
import type { Caution } from "../../core/index.js";

const useStyles = makeStyles({
  list: { display: "flex", flexDirection: "column", gap: "6px", margin: 0, padding: 0, listStyle: "none" },
  stop: { borderLeft: `4px solid ${tokens.colorStatusDangerBorder2}`, paddingLeft: "8px" },
  /** A stop is read before it is ticked: its words are as dark as any. */
  box: { "& label": { color: tokens.colorNeutralForeground1 } },
  look: { borderLeft: `4px solid ${tokens.colorStatusWarningBorder2}`, paddingLeft: "8px" },
  note: { borderLeft: `4px solid ${tokens.colorNeutralStroke1}`, paddingLeft: "8px" },
});

const WORD: Readonly<Record<Caution["level"], string>> = { stop: "Stop", look: "Look", note: "Note" };

const LEVELS = ["stop", "look", "note"] as const;
const byLevel = (a: Caution, b: Caution) => LEVELS.indexOf(a.level) - LEVELS.indexOf(b.level);

/**
 * Cautions where the hand is, stops first. Each says its level in a word; a stop has a box where `onTick` is given.
 *
 * @param ticked Ids of the stops that were ticked.
 */
export function Cautions(props: {
  cautions: readonly Caution[];
  ticked?: readonly string[];
  onTick?: (id: string, isTicked: boolean) => void;
}) {
  const styles = useStyles();
  if (props.cautions.length === 0) return null;
  return (
    <ul className={styles.list} aria-label="Cautions">
      {[...props.cautions].sort(byLevel).map((caution) => (
        <li key={caution.id} className={styles[caution.level]}>
          {caution.level === "stop" && props.onTick ? (
            <Checkbox
              className={styles.box}
              checked={props.ticked?.includes(caution.id) ?? false}
              onChange={(_, { checked }) => props.onTick?.(caution.id, checked === true)}
              label={`Stop: ${caution.text}`}
            />
          ) : (
            <span>
              <strong>{WORD[caution.level]}:</strong> {caution.text}
            </span>
          )}
        </li>
      ))}
    </ul>
  );
}
