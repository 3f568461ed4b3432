import { makeStyles, tokens } from "@fluentui/react-components";
import type { ReactNode } from "react";
import { cautionsOf } from "../../commands/fit.js";
import type { PartsRow, RulesInForce } from "../../core/index.js";
import { Stack } from "../kit/Stack.js";
import { ActionMark } from "./ActionMark.js";
import { Cautions } from "./Cautions.js";
import { figuresOf, measuredText, newFigures, offText, saidOf, whence } from "./cardTexts.js";
import { DriftPicture } from "./DriftPicture.js";

const useStyles = makeStyles({
  lines: { display: "grid", gridTemplateColumns: "76px minmax(0, 1fr)", columnGap: "8px", rowGap: "8px", margin: 0 },
  term: { color: tokens.colorNeutralForeground2, margin: 0 },
  said: { margin: 0, minWidth: 0 },
  whole: { gridColumn: "1 / -1", margin: 0, minWidth: 0 },
  value: { fontSize: "18px", lineHeight: "24px", fontWeight: 600 },
  quiet: { color: tokens.colorNeutralForeground2 },
});

/** Actions after which the part may still stay: what will be is for the case that it does not. */
const IF_IT_GOES = ["test", "lift", "check", "ask"];

/** One part: was, measured and will be below each other, with one line of because. */
export function PartCard(props: {
  row: PartsRow;
  inForce: RulesInForce;
  ticked?: readonly string[];
  onTick?: (id: string, on: boolean) => void;
}) {
  const { row } = props;
  const styles = useStyles();
  const { because, room } = saidOf(row, props.inForce);
  const title = [row.designator, row.section, row.usedAs].filter(Boolean).join(", ");
  return (
    <Stack title={title} isCard>
      <dl className={styles.lines}>
        <Line
          name="was"
          value={figuresOf({ ...row, type: null })}
          then={row.type}
          quiet={`${row.printed ?? ""}${whence(row, props.inForce.rules)}`}
        />
        {row.found && <Line name="found" value={row.found} quiet="in the set, in place of what the list says" />}
        <Line
          name="measured"
          value={measuredText(row)}
          quiet={[offText(row), row.verdict].filter(Boolean).join(", ")}
        />
        <dd className={styles.whole}>
          <DriftPicture row={row} />
        </dd>
        <Line name="will be" value={newFigures({ ...row, newType: null })} then={row.newType} quiet="">
          <ActionMark action={row.action} />
          {IF_IT_GOES.includes(row.action ?? "") && row.newValue && <div className={styles.term}>if it goes:</div>}
        </Line>
        <Line name="because" value={null} quiet={because.length > 0 ? because : "nothing says yet what to do"} />
        {room && <Line name="room" value={null} quiet={room} />}
        {row.offer && <Line name="buy" value={null} quiet={[row.offer, row.fit].filter(Boolean).join(": ")} />}
      </dl>
      <Cautions cautions={cautionsOf(row)} ticked={props.ticked} onTick={props.onTick} />
    </Stack>
  );
}

function Line(props: {
  name: string;
  value: string | null;
  then?: string | null;
  /** Several sentences stand below each other. */
  quiet: string | readonly string[];
  children?: ReactNode;
}) {
  const styles = useStyles();
  return (
    <>
      <dt className={styles.term}>{props.name}</dt>
      <dd className={styles.said}>
        {props.children}
        {props.value && <div className={styles.value}>{props.value}</div>}
        {props.then && <div>{props.then}</div>}
        {[props.quiet]
          .flat()
          .filter(Boolean)
          .map((text) => (
            <div key={text} className={props.value ? styles.quiet : undefined}>
              {text}
            </div>
          ))}
      </dd>
    </>
  );
}
