import { Field, Input, Select } from "@fluentui/react-components";
import { useState } from "react";
import { valuesOf } from "../../commands/book.js";
import { type Money, moneyMissing, rateStep, vendorCurrencyStep } from "../../commands/currencies.js";
import { useBench } from "../bench.js";
import { Quiet, Row, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";
import { logDay } from "../when.js";

/** In what money the user counts, and what other currencies are worth in it; said once, kept in Currencies, changed here or there. */
export function MoneyCard({ money }: { money: Money }) {
  const { book, run, services } = useBench();
  const missing = moneyMissing(money);
  const today = logDay(services.now());
  if (money.all.length < 2 && missing.length === 0) {
    return money.own === null ? <Quiet>No list states a currency: sums stand without one.</Quiet> : null;
  }
  return (
    <Stack title="Money" isCard>
      {missing.map((sentence) => (
        <span key={sentence}>{sentence}</span>
      ))}
      <Field label="You count in">
        <Select value={money.own ?? ""} onChange={(_, { value }) => void run(rateStep(book, value, 1, today))}>
          <option value="" disabled>
            not said yet
          </option>
          {[...new Set([...(money.own ? [money.own] : []), ...money.all])].map((code) => (
            <option key={code}>{code}</option>
          ))}
        </Select>
      </Field>
      {money.own !== null &&
        money.all.filter((code) => code !== money.own).map((code) => <Rate key={code} code={code} money={money} />)}
      {money.noCurrency.map((vendor) => (
        <VendorCurrency key={vendor} vendor={vendor} />
      ))}
    </Stack>
  );
}

function Rate({ code, money }: { code: string; money: Money }) {
  const { book, services } = useBench();
  const kept = money.rateOf(code);
  const of = valuesOf(book.currencies).find(({ currency }) => currency === code)?.asOf ?? null;
  const [typed, setTyped] = useState<string | null>(null);
  const text = typed ?? (kept === null ? "" : String(kept));
  return (
    <Row>
      <Field label={`1 ${code} in ${money.own}`} hint={of ? `rate of ${of}` : "no rate yet"}>
        <Input inputMode="decimal" value={text} onChange={(_, { value }) => setTyped(value)} />
      </Field>
      {typed !== null && (
        <StepButton
          step={rateStep(book, code, Number(typed.replace(",", ".")), logDay(services.now()))}
          then={() => setTyped(null)}
        />
      )}
    </Row>
  );
}

function VendorCurrency({ vendor }: { vendor: string }) {
  const { book } = useBench();
  const [code, setCode] = useState("");
  return (
    <Row>
      <Field label={`Currency of ${vendor}`}>
        <Input value={code} placeholder="EUR" onChange={(_, { value }) => setCode(value)} />
      </Field>
      {code !== "" && <StepButton step={vendorCurrencyStep(book, vendor, code)} />}
    </Row>
  );
}
