import { makeStyles } from "@fluentui/react-components";
import { type Effect, isChange } from "../../commands/effects.js";
import { Quiet } from "../kit/Stack.js";

const useStyles = makeStyles({ list: { margin: 0, paddingLeft: "18px", maxHeight: "360px", overflowY: "auto" } });

/** What a change does to each part, before it is written; those that stay as they are are counted. */
export function EffectList({ effects }: { effects: readonly Effect[] }) {
  const styles = useStyles();
  const changes = effects.filter(isChange);
  const rest = effects.length - changes.length;
  return (
    <>
      {changes.length === 0 && <Quiet>No part's answer changes by this.</Quiet>}
      <ul className={styles.list} aria-label="What changes">
        {changes.map(({ row, was, will }) => (
          <li key={row.at}>
            <strong>{row.values.designator}</strong> {row.values.section}: {was} becomes <strong>{will}</strong>
          </li>
        ))}
      </ul>
      {rest > 0 && changes.length > 0 && <Quiet>{rest} more keep their answer.</Quiet>}
    </>
  );
}
