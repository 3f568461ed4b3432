import { Button, Checkbox, Field, Input } from "@fluentui/react-components";
import type { OrderWishes } from "../../commands/order.js";
import { sparesOf } from "../../commands/orderBook.js";
import { keepSparesStep } from "../../commands/spares.js";
import type { Spares } from "../../core/index.js";
import { useBench } from "../bench.js";
import { Quiet, Row } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";

const KINDS = [
  ["resistor", "Spare resistors, in %"],
  ["capacitor", "Spare capacitors, in %"],
  ["other", "Spares of all else, in %"],
] as const;

/** What is asked of a plan: spares by kind, the most vendors, vendors left out, offers taken to be gone. */
export function Wishes(props: {
  wishes: OrderWishes;
  spares: Spares;
  vendors: readonly string[];
  isBusy: boolean;
  onWish: (changed: Partial<OrderWishes>) => void;
  onSpares: (spares: Spares) => void;
}) {
  const { book } = useBench();
  const { wishes, spares, vendors, isBusy, onWish } = props;
  const kept = sparesOf(book);
  const isKept = KINDS.every(([kind]) => kept[kind] === spares[kind]);
  return (
    <>
      {KINDS.map(([kind, label]) => (
        <Field key={kind} label={label}>
          <Input
            type="number"
            min={0}
            disabled={isBusy}
            value={String(Math.round(spares[kind] * 1000) / 10)}
            onChange={(_, { value }) => props.onSpares({ ...spares, [kind]: Math.max(0, Number(value) || 0) / 100 })}
          />
        </Field>
      ))}
      {!isKept && <StepButton step={keepSparesStep(book, spares)} />}
      <Field label="At most so many vendors" hint="Empty: any number">
        <Input
          type="number"
          min={1}
          disabled={isBusy}
          value={wishes.maxVendors === null ? "" : String(wishes.maxVendors)}
          onChange={(_, { value }) => onWish({ maxVendors: Number(value) > 0 ? Math.floor(Number(value)) : null })}
        />
      </Field>
      {vendors.map((name) => (
        <Checkbox
          key={name}
          label={`What if without ${name}`}
          disabled={isBusy}
          checked={wishes.without.includes(name)}
          onChange={(_, { checked }) =>
            onWish({ without: checked ? [...wishes.without, name] : wishes.without.filter((each) => each !== name) })
          }
        />
      ))}
      {wishes.gone.map((offer) => (
        <Row key={offer}>
          <Quiet>taken to be gone: {offer}</Quiet>
          <Button
            size="small"
            disabled={isBusy}
            onClick={() => onWish({ gone: wishes.gone.filter((each) => each !== offer) })}
          >
            It is there
          </Button>
        </Row>
      ))}
    </>
  );
}
