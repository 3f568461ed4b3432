import type { RefusedRow } from "../../core/index.js";
import { Quiet } from "../kit/Stack.js";

const LONGEST = 60;

/** Rows of a vendor's list that make no offer, each with its reason. */
export function RefusedRows({ rows }: { rows: readonly RefusedRow[] }) {
  return rows.map(({ row, text, reason }) => (
    <Quiet key={row}>
      row {row}: {text.slice(0, LONGEST)} ({reason})
    </Quiet>
  ));
}
