import { Button } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import { valuesOf } from "../../commands/book.js";
import { moneyMissing, moneyOf } from "../../commands/currencies.js";
import { bookBasket, isPlan, NO_WISHES, type OrderWishes, orderStep } from "../../commands/order.js";
import { sparesOf, vendorsOf, wantsOf } from "../../commands/orderBook.js";
import { type Planned, planBasket } from "../../commands/planBasket.js";
import type { DemandLine, Spares } from "../../core/index.js";
import { textOf, useBench } from "../bench.js";
import { MoneyCard } from "../card/MoneyCard.js";
import { OrderLines } from "../card/OrderLines.js";
import { PlanCard } from "../card/PlanCard.js";
import { WhatIf } from "../card/WhatIf.js";
import { Wishes } from "../card/Wishes.js";
import { Quiet, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";
import type { ScreenProps } from "../screens.js";

/** What to buy where over all open sets: the plan, what it saves, how good it is proven to be, and what if. */
export function OrderScreen({ go }: ScreenProps) {
  const { book, say, services } = useBench();
  const [wishes, setWishes] = useState<OrderWishes>(NO_WISHES);
  const [wished, setSpares] = useState<Spares | null>(null);
  const [planned, setPlanned] = useState<Planned | null>(null);
  const [inForce, setInForce] = useState<Planned | null>(null);
  const [search, setSearch] = useState<AbortController | null>(null);
  const spares = useMemo(() => wished ?? sparesOf(book), [book, wished]);
  const wants = useMemo(() => wantsOf(book, spares), [book, spares]);
  const money = useMemo(() => moneyOf(book, wants.offers), [book, wants]);
  const basket = useMemo(() => bookBasket(book, wants, wishes), [book, wants, wishes]);
  const isStale = useMemo(
    () => planned !== null && JSON.stringify(planned.basket) !== JSON.stringify(basket),
    [planned, basket],
  );
  const step = useMemo(
    () => (planned && !isStale && isPlan(planned.plan) ? orderStep(book, wants, planned.basket, planned.plan) : null),
    [book, wants, planned, isStale],
  );
  const plan = async () => {
    const stop = new AbortController();
    setSearch(stop);
    try {
      const found = await planBasket(basket, services.plan, setPlanned, stop.signal, services.planReasons);
      setPlanned(found);
      setInForce((before) => before ?? (isPlan(found.plan) ? found : null));
      say(null);
    } catch (error) {
      say({ kind: "problem", text: textOf(error) });
    }
    setSearch(null);
  };
  /** A plan rests on what was wished when it was made: another wish puts it aside, to be compared with the next one. */
  const wish = (changed: Partial<OrderWishes>) => {
    setWishes({ ...wishes, ...changed });
    setPlanned(null);
  };
  if (wants.offers.length === 0) return <Quiet>No offers yet. Bring in a vendor's list first, under Vendors.</Quiet>;
  const takeIntoForce = () => setInForce(planned);
  return (
    <>
      <Stack title="Plan an order" isCard>
        <Quiet>
          {wants.demands.length} parts of {new Set(wants.demands.map(({ part }) => part.split("-")[0])).size} sets are
          to be bought; {basket.lines.length} different lines have offers
          {basket.lines.length < wants.lines.length &&
            `, ${wants.lines.length - basket.lines.length} have none: see Vendors`}
          .
        </Quiet>
        <Wishes
          wishes={wishes}
          spares={spares}
          vendors={vendorsOf(book, wants.offers, money).map(({ id }) => id)}
          isBusy={search !== null}
          onWish={wish}
          onSpares={(changed) => {
            setSpares(changed);
            setPlanned(null);
          }}
        />
        {search ? (
          <Button onClick={() => search.abort()}>Stop weighing, keep the best so far</Button>
        ) : (
          <Button appearance="primary" disabled={basket.lines.length === 0} onClick={() => void plan()}>
            Plan {basket.lines.length} lines
          </Button>
        )}
      </Stack>
      {moneyMissing(money).length > 0 && <MoneyCard money={money} />}
      {planned && isStale && !search && <Quiet>Parts, offers or terms have changed since this plan: plan again.</Quiet>}
      {planned && inForce && inForce !== planned && !search && (
        <WhatIf inForce={inForce} planned={planned} nameOf={(id) => lineName(wants.lines, id)}>
          <Button onClick={takeIntoForce}>Hold the next plans against this one</Button>
        </WhatIf>
      )}
      {planned && (
        <PlanCard
          planned={planned}
          onGone={search || isStale ? null : (offer) => wish({ gone: [...wishes.gone, offer] })}
        />
      )}
      {step && !search && <StepButton step={step} appearance="primary" then={takeIntoForce} />}
      {moneyMissing(money).length === 0 && <MoneyCard money={money} />}
      <OrderLines rows={book.order?.rows ?? []} go={go} />
      {valuesOf(book.order).length === 0 && <Quiet>No order stands in the sheet yet.</Quiet>}
    </>
  );
}

/** A line by its first part, what is wanted, and how many more parts want it. */
function lineName(lines: readonly DemandLine[], id: string): string {
  const line = lines.find((each) => each.id === id);
  if (!line) return id;
  const more = new Set(line.demands.map(({ part }) => part)).size - 1;
  return [id, more > 0 && `and ${more} more`, line.demands[0]!.ratings.aim?.text].filter(Boolean).join(" ");
}
