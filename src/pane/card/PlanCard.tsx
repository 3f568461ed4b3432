import { Button, makeStyles } from "@fluentui/react-components";
import { isPlan } from "../../commands/order.js";
import type { Planned } from "../../commands/planBasket.js";
import { moneyText, type Plan } from "../../core/index.js";
import { Quiet, Row, Stack } from "../kit/Stack.js";
import { useTableStyles } from "../kit/useTableStyles.js";

const useStyles = makeStyles({
  cost: { fontSize: "18px", lineHeight: "24px", fontWeight: 600 },
});

/** A plan: what it costs, how good it is proven to be, each vendor's bill and why, where the cheapest is not taken, and what is bought. */
export function PlanCard({ planned, onGone }: { planned: Planned; onGone: ((offer: string) => void) | null }) {
  const styles = useStyles();
  const { plan, basket } = planned;
  if (!isPlan(plan)) {
    return (
      <Stack title="No plan is possible" isCard>
        {plan.because.map((reason) => (
          <span key={reason}>{reason}</span>
        ))}
      </Stack>
    );
  }
  const gap = plan.cost - plan.bound;
  return (
    <Stack title="The plan" isCard>
      <div className={styles.cost}>{moneyText(plan.cost, basket.currency)} in all</div>
      <span>
        {gap < 0.005 ? "No plan is cheaper." : `No plan is more than ${moneyText(gap, basket.currency)} cheaper.`}
      </span>
      <Bills planned={planned} />
      <Sentences head="Why each vendor" of={planned.reasons.map(({ vendor, because }) => `${vendor}: ${because}`)} />
      <Sentences
        head="Where the cheapest is not taken"
        of={planned.dearer.map(({ offer, because }) => `${offer}: ${because}.`)}
      />
      <Sentences head="Instead of this plan" of={planned.savings} />
      {onGone && <Bought plan={plan} onGone={onGone} />}
    </Stack>
  );
}

/** Each vendor's bill in its own currency, and what it comes to in the user's. */
function Bills({ planned: { bills, basket } }: { planned: Planned }) {
  const styles = useTableStyles();
  const currencies = new Map(basket.vendors.map(({ id, currency }) => [id, currency]));
  return (
    <table className={styles.table}>
      <thead>
        <tr>
          <th scope="col">Vendor</th>
          <th scope="col">Goods</th>
          <th scope="col">Shipping and fee</th>
          <th scope="col">In all</th>
        </tr>
      </thead>
      <tbody>
        {bills.map(({ vendor, goods, shipping, fee, total }) => (
          <tr key={vendor}>
            <th scope="row">{vendor}</th>
            <td>{moneyText(goods, currencies.get(vendor))}</td>
            <td>{moneyText(shipping + fee, currencies.get(vendor))}</td>
            <td>{moneyText(total, basket.currency)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** What the plan buys, each with the question what the plan would be without it. */
function Bought({ plan, onGone }: { plan: Plan; onGone: (offer: string) => void }) {
  return (
    <details>
      <summary>What it buys, {plan.orders.length} offers; what if one is gone</summary>
      {plan.orders.map(({ offer, units }) => (
        <Row key={offer}>
          <span>
            {units} x {offer}
          </span>
          <Button size="small" aria-label={`What if ${offer} is gone`} onClick={() => onGone(offer)}>
            What if it is gone
          </Button>
        </Row>
      ))}
    </details>
  );
}

/** Some sentences under a head; nothing where there are none, and behind a fold from the fifth on. */
export function Sentences({ head, of }: { head: string; of: readonly string[] }) {
  if (of.length === 0) return null;
  const SHOWN = 5;
  return (
    <div>
      <strong>{head}</strong>
      {of.slice(0, SHOWN).map((sentence) => (
        <div key={sentence}>{sentence}</div>
      ))}
      {of.length > SHOWN && (
        <details>
          <summary>and {of.length - SHOWN} more</summary>
          {of.slice(SHOWN).map((sentence) => (
            <Quiet key={sentence}>{sentence}</Quiet>
          ))}
        </details>
      )}
    </div>
  );
}
