import { Field, Select } from "@fluentui/react-components";
import { useState } from "react";
import { valuesOf } from "../../commands/book.js";
import { missingRules, putBackStep, restoreSetting } from "../../commands/rulesRows.js";
import { type RulesRow, readSetting, SETTING_WORDS, settingNamed, settingWants, wordFor } from "../../core/index.js";
import { useBench } from "../bench.js";
import { EditRule, Effects, Restore } from "../card/EditRule.js";
import { CellField } from "../kit/CellField.js";
import { PickRule } from "../kit/PickRule.js";
import { Quiet, Row, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";
import { rowInHand } from "../useSet.js";

/** A row's name among the choices; one that is switched off says so. */
const nameOf = ({ label, id, off }: RulesRow) => `${label ?? id}${off ? " (off)" : ""}`;

/** Every rule and setting is the user's: an edit shows which parts change before it is written. */
export function RulesScreen() {
  const bench = useBench();
  const rows = valuesOf(bench.book.rules);
  const hand = rowInHand(bench)?.values ?? null;
  const [picked, setPicked] = useState<string | null>(null);
  const row = rows.find((each) => (picked === null ? each.label === hand?.type : keyOf(each) === picked)) ?? null;
  const missing = missingRules(bench.book);
  if (rows.length === 0) return <Quiet>Rules and Settings get their sheets with the first list.</Quiet>;
  const choices = rows.map((each) => ({ id: keyOf(each), label: nameOf(each) }));
  const pick = (label: string) => setPicked(choices.find((each) => each.label === label)?.id ?? null);
  return (
    <Stack title="Rules">
      <Quiet>
        Every row of Rules and Settings is yours. Change it here and see first which parts change, or in the sheet.
      </Quiet>
      <PickRule label="Type or use" rules={choices} value={row && nameOf(row)} onPick={pick} />
      {row && <EditRule key={keyOf(row)} row={row} />}
      {missing.length > 0 && (
        <Stack title={`${missing.length} default rows are not in Rules`} isCard>
          {missing.map((rule) => (
            <Row key={`${rule.scope} ${rule.id}`}>
              <StepButton step={putBackStep(bench.book, [rule])} />
            </Row>
          ))}
        </Stack>
      )}
      <EditSetting />
    </Stack>
  );
}

const keyOf = ({ scope, id }: RulesRow) => `${scope} ${id}`;

function EditSetting() {
  const { book } = useBench();
  const settings = valuesOf(book.settings);
  const [key, setKey] = useState("policy");
  const [typed, setTyped] = useState<string | null>(null);
  const row = settings.find((each) => each.key === key);
  const back = row && typed === null ? restoreSetting(row) : null;
  const text = typed ?? row?.setting ?? "";
  const isFaulty = readSetting(key, text) === null;
  const choices = settingNamed(key)?.choices;
  return (
    <Stack title="Settings" isCard>
      <Field label="Setting" hint={row?.meaning ?? ""}>
        <Select
          value={key}
          onChange={(_, { value }) => {
            setKey(value);
            setTyped(null);
          }}
        >
          {settings.map((each) => (
            <option key={each.key} value={each.key ?? ""}>
              {wordFor(SETTING_WORDS, each.key ?? "")}
            </option>
          ))}
        </Select>
      </Field>
      <CellField
        label={choices || !row?.unit ? "Stands at" : `Stands at, ${row.unit}`}
        text={text}
        words={choices ? Object.values(choices) : null}
        fault={isFaulty ? settingWants(key) : undefined}
        onText={setTyped}
      />
      {typed !== null && typed !== row?.setting && !isFaulty && (
        <Effects edit={{ sheet: "settings", key, setting: typed }} done={() => setTyped(null)} />
      )}
      {back && <Restore edit={back} />}
    </Stack>
  );
}
