import { makeStyles, tokens } from "@fluentui/react-components";
import type { ReactNode } from "react";
import { changesSince, type Planned, servedText } from "../../commands/planBasket.js";
import { moneyText } from "../../core/index.js";
import { Quiet, Stack } from "../kit/Stack.js";

const useStyles = makeStyles({
  table: {
    borderCollapse: "collapse",
    width: "100%",
    "& th, & td": {
      textAlign: "left",
      verticalAlign: "top",
      fontWeight: 400,
      padding: "4px 6px 4px 0",
      borderBottom: `1px solid ${tokens.colorNeutralStroke3}`,
    },
    "& td:last-child": { textAlign: "right", whiteSpace: "nowrap" },
  },
});

/**
 * What a plan changes against the one in force, in money and line by line, before anything is written.
 *
 * @param nameOf What a line of the basket is called.
 */
export function WhatIf(props: {
  inForce: Planned;
  planned: Planned;
  nameOf: (line: string) => string;
  children: ReactNode;
}) {
  const styles = useStyles();
  const { inForce, planned, nameOf } = props;
  const changes = changesSince(inForce, planned);
  if (!changes) return null;
  const more = (amount: number) => `${amount > 0 ? "+" : ""}${moneyText(amount, planned.basket.currency)}`;
  const same = changes.lines.length === 0 && changes.bills.length === 0;
  return (
    <Stack title="Against the plan in force" isCard>
      <strong>
        {moneyText(Math.abs(changes.more), planned.basket.currency)} {changes.more < 0 ? "less" : "more"} than the plan
        in force
      </strong>
      {same ? (
        <Quiet>No line changes.</Quiet>
      ) : (
        <table className={styles.table}>
          <thead>
            <tr>
              <th scope="col">What changes</th>
              <th scope="col">More or less</th>
            </tr>
          </thead>
          <tbody>
            {changes.lines.map((one) => (
              <tr key={one.line}>
                <td>
                  {nameOf(one.line)}: {servedText(one.after)} instead of {servedText(one.before)}
                </td>
                <td>{more(one.more)}</td>
              </tr>
            ))}
            {changes.bills.map((one) => (
              <tr key={one.vendor}>
                <td>{one.vendor}: shipping, fee and what fills the order up</td>
                <td>{more(one.more)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {props.children}
    </Stack>
  );
}
