import { makeStyles, mergeClasses } from "@fluentui/react-components";
import type { ReactNode } from "react";
import { changesSince, type Planned, servedText } from "../../commands/planBasket.js";
import { moneyText } from "../../core/index.js";
import { Quiet, Stack } from "../kit/Stack.js";
import { useTableStyles } from "../kit/useTableStyles.js";

const useStyles = makeStyles({
  money: {
    "& th, & td": { verticalAlign: "top", fontWeight: 400 },
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
  const { table } = useTableStyles();
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
        <table className={mergeClasses(table, styles.money)}>
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
