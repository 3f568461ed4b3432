import {
  Button,
  Field,
  Input,
  Menu,
  MenuItem,
  MenuList,
  MenuPopover,
  MenuTrigger,
  makeStyles,
  tokens,
} from "@fluentui/react-components";
import { useState } from "react";
import { deliveryStep } from "../../commands/deliveries.js";
import { cameOf, piecesOf, stillToCome } from "../../commands/had.js";
import { newReadingStep } from "../../commands/newReading.js";
import type { ViewRow } from "../../commands/openSheet.js";
import { moneyText, type ORDER_SHEET, ORDER_STATES, type PARTS_SHEET, readForWhom } from "../../core/index.js";
import { useBench } from "../bench.js";
import { Row, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";
import type { ScreenProps } from "../screens.js";
import { logTime } from "../when.js";

const useStyles = makeStyles({
  item: { padding: "6px 0", borderBottom: `1px solid ${tokens.colorNeutralStroke3}` },
  line: { display: "flex", gap: "8px", alignItems: "center", justifyContent: "space-between" },
  quiet: { color: tokens.colorNeutralForeground2 },
});

/** States in which a part of a line may be in the house. */
const IN_PARTS = ["on the way", "short", "sent another"] as const;

/** One line of the order: what became of it, how many came of it, and what the new parts read. */
export function OrderLine({ row, go }: { row: ViewRow<typeof ORDER_SHEET> } & ScreenProps) {
  const styles = useStyles();
  const { book, run } = useBench();
  const [isMeasuring, setMeasuring] = useState(false);
  const { at, values } = row;
  const [came, all] = [cameOf(values), piecesOf(values)];
  const left = stillToCome(values);
  const isPart = IN_PARTS.some((state) => state === values.state);
  return (
    <li className={styles.item}>
      <div className={styles.line}>
        <span>
          {values.units} x {values.stockNumber ?? values.description}, {moneyText(values.cost ?? 0, values.currency)}
        </span>
        <Menu>
          <MenuTrigger disableButtonEnhancement>
            <Button size="small">{values.state ?? "to order"}</Button>
          </MenuTrigger>
          <MenuPopover>
            <MenuList>
              {ORDER_STATES.map((state) => (
                <MenuItem key={state} onClick={() => void run(deliveryStep(book, at, { state }))}>
                  {state}
                </MenuItem>
              ))}
            </MenuList>
          </MenuPopover>
        </Menu>
      </div>
      <div className={styles.quiet}>
        {values.description}; for {values.forWhom || "stock"}; {values.why}
      </div>
      {isPart && <CameSoFar key={`${values.state} ${came}`} row={row} />}
      {came > 0 && (
        <Row>
          <span>
            {came} of {all} pieces here{left > 0 ? `, ${left} to come` : ""}
          </span>
          <Button size="small" aria-expanded={isMeasuring} onClick={() => setMeasuring(!isMeasuring)}>
            Measure what came
          </Button>
        </Row>
      )}
      {isMeasuring && <MeasureNew row={row} go={go} />}
    </li>
  );
}

/** How many pieces of a line are in the house: part deliveries are counted here. */
function CameSoFar({ row: { at, values } }: { row: ViewRow<typeof ORDER_SHEET> }) {
  const { book } = useBench();
  const came = cameOf(values);
  const [typed, setTyped] = useState(String(came));
  const pieces = Math.floor(Number(typed));
  const isNew = typed !== "" && pieces >= 0 && pieces !== came;
  return (
    <Row>
      <Field label={`Pieces here, of ${piecesOf(values)}`}>
        <Input type="number" min={0} value={typed} onChange={(_, { value }) => setTyped(value)} />
      </Field>
      {isNew && <StepButton step={deliveryStep(book, at, { state: values.state ?? "on the way", came: pieces })} />}
    </Row>
  );
}

/** A reading for each new part that came, held against its own tolerance before it is fitted. */
function MeasureNew({ row, go }: { row: ViewRow<typeof ORDER_SHEET> } & ScreenProps) {
  const { book } = useBench();
  const ids = readForWhom(row.values.forWhom).map(({ part }) => part);
  const here = (book.parts?.rows ?? []).filter(
    ({ values }) => ids.includes(values.id ?? "") && (values.came ?? 0) > 0 && values.fitted === null,
  );
  return (
    <Stack>
      {here.length === 0 && <span>No part of it waits to be fitted.</span>}
      {here.map((part) => (
        <NewReading key={part.at} part={part} />
      ))}
      <div>
        <Button size="small" onClick={() => go("bench")}>
          To the bench
        </Button>
      </div>
    </Stack>
  );
}

function NewReading({ part }: { part: ViewRow<typeof PARTS_SHEET> }) {
  const { book, services } = useBench();
  const [text, setText] = useState(part.values.fittedReading ?? "");
  const step = newReadingStep(book, part, text, logTime(services.now()));
  return (
    <Row>
      <Field label={`${part.values.id} ${part.values.designator ?? ""}, new: ${part.values.newValue ?? ""}`}>
        <Input value={text} placeholder={part.values.newValue ?? ""} onChange={(_, { value }) => setText(value)} />
      </Field>
      {text !== (part.values.fittedReading ?? "") && <StepButton step={step} />}
    </Row>
  );
}
