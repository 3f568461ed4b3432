import { Button, makeStyles } from "@fluentui/react-components";
import { useState } from "react";
import type { TakenList } from "../../commands/longLists.js";
import type { RefusedRow } from "../../core/index.js";
import { useBench } from "../bench.js";
import { Quiet, Stack } from "../kit/Stack.js";
import { countText, sizeText } from "../useLists.js";
import { RefusedRows } from "./RefusedRows.js";

const useStyles = makeStyles({ list: { margin: 0, paddingLeft: "18px" } });

/** Refused rows shown at once. */
const PAGE = 20;

/** What became of a long list: offers and refused rows with their reasons, and what changed since the list before. */
export function TakenCard({ taken, close }: { taken: TakenList; close: () => void }) {
  const styles = useStyles();
  const { services } = useBench();
  const [shown, show] = useState<readonly RefusedRow[]>([]);
  const { kept, reasons, changes, seconds } = taken;
  const more = async () => {
    show([...shown, ...(await services.lists.refused(kept.vendor, shown.length, shown.length + PAGE))]);
  };
  return (
    <Stack title={`The list of ${kept.vendor}`} isCard>
      <span>
        {countText(kept.offers)} offers and {countText(kept.refused)} refused rows out of {countText(kept.rows)} lines,
        heads among them.
      </span>
      <Quiet>
        Lines read in {seconds.lines.toFixed(1)} s, offers in {seconds.offers.toFixed(0)} s. Kept in this browser,{" "}
        {sizeText(kept.bytes)}.
      </Quiet>
      {changes && (
        <div>
          <strong>Since the list before</strong>
          {changes.length === 0 && <div>Nothing has changed.</div>}
          <ul className={styles.list}>
            {changes.map(({ change, count, examples }) => (
              <li key={change}>
                {countText(count)} {change}:{" "}
                {examples.map((offer) => offer.stockNumber ?? offer.description).join(", ")}
                {count > examples.length && " ..."}
              </li>
            ))}
          </ul>
        </div>
      )}
      {reasons.length > 0 && (
        <div>
          <strong>Refused</strong>
          <ul className={styles.list}>
            {reasons.map(([reason, rows]) => (
              <li key={reason}>
                {countText(rows)}: {reason}
              </li>
            ))}
          </ul>
        </div>
      )}
      <RefusedRows rows={shown} />
      {shown.length < kept.refused && <Button onClick={() => void more()}>Show refused rows</Button>}
      <Button onClick={close}>Close</Button>
    </Stack>
  );
}
