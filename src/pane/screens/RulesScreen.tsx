import { Button, Field, Input, Select } from "@fluentui/react-components";
import { useState } from "react";
import { rulesOf, valuesOf } from "../../commands/book.js";
import { effectsOf, type RuleEdit, restoreEdit, ruleEditStep } from "../../commands/rulesChange.js";
import { ACTIONS, labelOf, RULES_SHEET, type RulesRow } from "../../core/index.js";
import { useBench } from "../bench.js";
import { EffectList } from "../card/EffectList.js";
import { PickRule } from "../kit/PickRule.js";
import { Quiet, Row, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";
import { rowInHand } from "../useSet.js";

/** The columns of a rule that are changed here; all others are edited in the sheet. */
const ACTION_KEYS = ["trade", "conservator", "overhaul"] as const;
const TEXT_KEYS = ["driftLimit", "technologies", "leastVolts", "wantVolts", "unstatedWatts", "because"] as const;

/** Every rule and setting is the user's: an edit shows which parts change before it is written. */
export function RulesScreen() {
  const bench = useBench();
  const rows = valuesOf(bench.book.rules);
  const hand = rowInHand(bench)?.values ?? null;
  const [picked, setPicked] = useState<string | null>(null);
  const rules = rulesOf(bench.book, hand?.project ?? null).rules;
  const name = picked ?? hand?.type ?? null;
  const row = rows.find(({ label, id }) => label === name || id === name) ?? null;
  if (rows.length === 0) return <Quiet>Rules and Settings get their sheets with the first list.</Quiet>;
  return (
    <Stack title="Rules">
      <Quiet>
        Every row of Rules and Settings is yours. Change it here and see first which parts change, or in the sheet.
      </Quiet>
      <PickRule
        label="Type or use"
        rules={rules}
        value={row && labelOf(rules, row.scope ?? "class", row.id ?? "")}
        onPick={setPicked}
      />
      {row && <EditRule key={`${row.scope}${row.id}`} row={row} />}
      <EditSetting />
    </Stack>
  );
}

function EditRule({ row }: { row: RulesRow }) {
  const [cells, setCells] = useState<Readonly<Partial<Record<keyof RulesRow, string>>>>({});
  const set = (key: keyof RulesRow, value: string) => setCells({ ...cells, [key]: value });
  const edit: RuleEdit = { sheet: "rules", scope: row.scope ?? "", id: row.id ?? "", cells };
  const back = restoreEdit(row);
  return (
    <Stack title={row.label ?? row.id ?? ""} isCard>
      {ACTION_KEYS.map((key) => (
        <Field key={key} label={RULES_SHEET.columns[key].head}>
          <Select value={cells[key] ?? row[key] ?? ""} onChange={(_, { value }) => set(key, value)}>
            <option value="">no say</option>
            {ACTIONS.map((action) => (
              <option key={action}>{action}</option>
            ))}
          </Select>
        </Field>
      ))}
      {TEXT_KEYS.map((key) => (
        <Field key={key} label={RULES_SHEET.columns[key].head}>
          <Input value={cells[key] ?? String(row[key] ?? "")} onChange={(_, { value }) => set(key, value)} />
        </Field>
      ))}
      {Object.keys(cells).length > 0 && <Effects edit={edit} done={() => setCells({})} />}
      {back && Object.keys(cells).length === 0 && <Restore edit={back} />}
    </Stack>
  );
}

function Restore({ edit }: { edit: RuleEdit }) {
  const [isOpen, setOpen] = useState(false);
  if (!isOpen) return <Button onClick={() => setOpen(true)}>Restore the default of this row</Button>;
  return <Effects edit={edit} done={() => setOpen(false)} />;
}

function EditSetting() {
  const { book } = useBench();
  const settings = valuesOf(book.settings);
  const [key, setKey] = useState("policy");
  const [typed, setTyped] = useState<string | null>(null);
  const row = settings.find((each) => each.key === key);
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
              {each.key}
            </option>
          ))}
        </Select>
      </Field>
      <Field label={`Stands at${row?.unit ? `, ${row.unit}` : ""}`}>
        <Input value={typed ?? row?.setting ?? ""} onChange={(_, { value }) => setTyped(value)} />
      </Field>
      {typed !== null && typed !== row?.setting && (
        <Effects edit={{ sheet: "settings", key, setting: typed }} done={() => setTyped(null)} />
      )}
    </Stack>
  );
}

/** What an edit would change, part by part, and the button that writes it. */
function Effects({ edit, done }: { edit: RuleEdit; done: () => void }) {
  const { book } = useBench();
  const effects = effectsOf(book, edit);
  return (
    <>
      <EffectList effects={effects} />
      <Row>
        <StepButton step={ruleEditStep(book, edit, effects)} appearance="primary" then={done} />
        <Button onClick={done}>Leave it</Button>
      </Row>
    </>
  );
}
