import { Button, Checkbox, Field, Input, makeStyles, tokens } from "@fluentui/react-components";
import { useState } from "react";
import { valuesOf } from "../../commands/book.js";
import { bookBasket, isPlan, type OrderWishes, orderStep } from "../../commands/order.js";
import { vendorsOf, wantsOf } from "../../commands/orderBook.js";
import { changesSince, type Planned, planBasket } from "../../commands/planBasket.js";
import { textOf, useBench } from "../bench.js";
import { OrderLines } from "../card/OrderLines.js";
import { Quiet, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";

const useStyles = makeStyles({
  table: {
    borderCollapse: "collapse",
    width: "100%",
    "& th, & td": {
      textAlign: "left",
      padding: "4px 6px 4px 0",
      borderBottom: `1px solid ${tokens.colorNeutralStroke3}`,
    },
  },
  cost: { fontSize: "18px", lineHeight: "24px", fontWeight: 600 },
});

/** What to buy where over all open sets: the plan, what it saves, how good it is proven to be, and what if. */
export function OrderScreen() {
  const { book, say, services } = useBench();
  const [wishes, setWishes] = useState<OrderWishes>({ maxVendors: null, without: [] });
  const [spares, setSpares] = useState("0");
  const [planned, setPlanned] = useState<Planned | null>(null);
  const [before, setBefore] = useState<Planned | null>(null);
  const [search, setSearch] = useState<AbortController | null>(null);
  const wants = wantsOf(book, (Number(spares) || 0) / 100);
  const names = vendorsOf(book, wants.offers).map(({ id }) => id);
  const basket = bookBasket(book, wants, wishes);
  const plan = async () => {
    const stop = new AbortController();
    setSearch(stop);
    try {
      setPlanned(await planBasket(basket, services.plan, setPlanned, stop.signal));
      say(null);
    } catch (error) {
      say({ kind: "problem", text: textOf(error) });
    }
    setSearch(null);
  };
  /** A plan rests on what was wished when it was made: another wish puts it aside, to be compared with the next one. */
  const putAside = () => {
    setBefore(planned ?? before);
    setPlanned(null);
  };
  const wish = (changed: Partial<OrderWishes>) => {
    setWishes({ ...wishes, ...changed });
    putAside();
  };
  const leaveOut = (name: string, isOut: boolean) =>
    wish({ without: isOut ? [...wishes.without, name] : wishes.without.filter((each) => each !== name) });
  const wishSpares = (percent: string) => {
    setSpares(percent);
    putAside();
  };
  if (wants.offers.length === 0) return <Quiet>No offers yet. Bring in a vendor's list first, under Vendors.</Quiet>;
  return (
    <>
      <Stack title="Plan an order" isCard>
        <Quiet>
          {wants.demands.length} parts of {new Set(wants.demands.map(({ part }) => part.split("-")[0])).size} sets are
          to be bought; {basket.lines.length} different lines have offers.
        </Quiet>
        <Field label="Spares, in %">
          <Input
            type="number"
            disabled={search !== null}
            value={spares}
            onChange={(_, { value }) => wishSpares(value)}
          />
        </Field>
        <Field label="At most so many vendors" hint="Empty: any number">
          <Input
            type="number"
            disabled={search !== null}
            value={wishes.maxVendors === null ? "" : String(wishes.maxVendors)}
            onChange={(_, { value }) => wish({ maxVendors: Number(value) || null })}
          />
        </Field>
        {names.map((name) => (
          <Checkbox
            key={name}
            label={`What if without ${name}`}
            disabled={search !== null}
            checked={wishes.without.includes(name)}
            onChange={(_, { checked }) => leaveOut(name, checked === true)}
          />
        ))}
        {search ? (
          <Button onClick={() => search.abort()}>Stop weighing, keep the best so far</Button>
        ) : (
          <Button appearance="primary" disabled={basket.lines.length === 0} onClick={() => void plan()}>
            Plan {basket.lines.length} lines
          </Button>
        )}
      </Stack>
      {planned && <PlanCard planned={planned} changes={before && !search ? changesSince(before, planned) : []} />}
      {planned && !search && isPlan(planned.plan) && (
        <StepButton step={orderStep(book, wants, planned.basket, planned.plan)} appearance="primary" />
      )}
      <OrderLines rows={book.order?.rows ?? []} />
      {valuesOf(book.order).length === 0 && <Quiet>No order stands in the sheet yet.</Quiet>}
    </>
  );
}

function PlanCard({ planned, changes }: { planned: Planned; changes: readonly string[] }) {
  const styles = useStyles();
  const { plan } = planned;
  if (!isPlan(plan)) {
    return (
      <Stack title="No plan is possible" isCard>
        {plan.because.map((reason) => (
          <span key={reason}>{reason}</span>
        ))}
      </Stack>
    );
  }
  const money = (amount: number) => amount.toFixed(2);
  const gap = plan.cost - plan.bound;
  return (
    <Stack title="The plan" isCard>
      <div className={styles.cost}>{money(plan.cost)} in all</div>
      <span>{gap < 0.005 ? "No plan is cheaper." : `No plan is more than ${money(gap)} cheaper.`}</span>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">Vendor</th>
            <th scope="col">Goods</th>
            <th scope="col">Shipping</th>
            <th scope="col">In all</th>
          </tr>
        </thead>
        <tbody>
          {planned.bills.map((bill) => (
            <tr key={bill.vendor}>
              <th scope="row">{bill.vendor}</th>
              <td>{money(bill.goods)}</td>
              <td>{money(bill.shipping + bill.fee)}</td>
              <td>{money(bill.total)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <Sentences head="Why each vendor" of={planned.reasons.map(({ vendor, because }) => `${vendor}: ${because}`)} />
      <Sentences head="Instead of this plan" of={planned.savings} />
      <Sentences head="What the change does" of={changes} />
    </Stack>
  );
}

/** Some sentences under a head; nothing where there are none. */
function Sentences({ head, of }: { head: string; of: readonly string[] }) {
  if (of.length === 0) return null;
  return (
    <div>
      <strong>{head}</strong>
      {of.map((sentence) => (
        <div key={sentence}>{sentence}</div>
      ))}
    </div>
  );
}
