import { Button, Checkbox, Field, Input, Select } from "@fluentui/react-components";
import { useState } from "react";
import { effectsOf, type RuleEdit, ruleEditStep } from "../../commands/rulesChange.js";
import { addRuleStep, restoreEdit } from "../../commands/rulesRows.js";
import { ACTIONS, RULES_SHEET, type RulesRow, technologyOf } from "../../core/index.js";
import { useBench } from "../bench.js";
import { Quiet, Row, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";
import { EffectList } from "./EffectList.js";

type Key = keyof RulesRow;

const ACTION_KEYS = ["trade", "conservator", "overhaul"] as const;
/** What is changed most; all other columns stand behind a button. */
const OFTEN: readonly Key[] = ["driftLimit", "technologies", "leastVolts", "wantVolts", "unstatedWatts", "because"];
/** What makes a row that row, and what its own fields show. */
const NOT_TYPED: readonly Key[] = ["scope", "id", "off", "source", ...ACTION_KEYS];
const SELDOM = (Object.keys(RULES_SHEET.columns) as Key[]).filter((key) => ![...OFTEN, ...NOT_TYPED].includes(key));

/** Why a text can't stand in a column of Rules; nothing where it can. */
function faultOf(key: Key, text: string): string | undefined {
  if (text !== "" && RULES_SHEET.columns[key].read(text) === null) return "This column does not take it";
  if (key !== "technologies") return undefined;
  const unknown = text.split(/\s*>\s*/).filter((id) => id !== "" && !technologyOf(id));
  return unknown.length > 0 ? `Not known: ${unknown.join(", ")}` : undefined;
}

/** One row of Rules, every column of it: an edit shows which parts change before it is written. */
export function EditRule({ row }: { row: RulesRow }) {
  const [cells, setCells] = useState<Readonly<Partial<Record<Key, string>>>>({});
  const [isAll, setAll] = useState(false);
  const set = (key: Key, value: string) => setCells({ ...cells, [key]: value });
  const textOf = (key: Key) => cells[key] ?? String(row[key] ?? "");
  const isOff = cells.off === undefined ? row.off === true : cells.off === "yes";
  const edit: RuleEdit = { sheet: "rules", scope: row.scope ?? "", id: row.id ?? "", cells };
  const back = restoreEdit(row);
  const isTouched = Object.keys(cells).length > 0;
  const isFaulty = (Object.entries(cells) as [Key, string][]).some(([key, text]) => faultOf(key, text));
  return (
    <Stack title={row.label ?? row.id ?? ""} isCard>
      <Checkbox
        label="Switched off: counts as not known"
        checked={isOff}
        onChange={(_, { checked }) => set("off", checked === true ? "yes" : "")}
      />
      {ACTION_KEYS.map((key) => (
        <Field key={key} label={RULES_SHEET.columns[key].head}>
          <Select value={textOf(key)} onChange={(_, { value }) => set(key, value)}>
            <option value="">no say</option>
            {ACTIONS.map((action) => (
              <option key={action}>{action}</option>
            ))}
          </Select>
        </Field>
      ))}
      {[...OFTEN, ...(isAll ? SELDOM : [])].map((key) => (
        <Field key={key} label={RULES_SHEET.columns[key].head} validationMessage={faultOf(key, textOf(key))}>
          <Input value={textOf(key)} onChange={(_, { value }) => set(key, value)} />
        </Field>
      ))}
      <Quiet>Source: {row.source ?? "none"}</Quiet>
      <Row>
        <Button onClick={() => setAll(!isAll)} aria-expanded={isAll}>
          {isAll ? "Fewer columns" : `${SELDOM.length} more columns`}
        </Button>
      </Row>
      {isTouched && !isFaulty && <Effects edit={edit} done={() => setCells({})} />}
      {!isTouched && back && <Restore edit={back} />}
      {!isTouched && <AddLike row={row} />}
    </Stack>
  );
}

/** Shows what the defaults would change, then puts them back. */
export function Restore({ edit }: { edit: RuleEdit }) {
  const [isOpen, setOpen] = useState(false);
  if (isOpen) return <Effects edit={edit} done={() => setOpen(false)} />;
  return (
    <Row>
      <Button onClick={() => setOpen(true)}>Restore the default of this row</Button>
    </Row>
  );
}

function AddLike({ row }: { row: RulesRow }) {
  const { book } = useBench();
  const [name, setName] = useState("");
  const what = row.scope === "class" ? "type" : "use";
  return (
    <>
      <Field label={`A ${what} of your own, like this one`} hint="Its name; then change its row as you like.">
        <Input value={name} onChange={(_, { value }) => setName(value)} />
      </Field>
      <Row>{name.trim() !== "" && <StepButton step={addRuleStep(book, row, name)} then={() => setName("")} />}</Row>
    </>
  );
}

/** What an edit would change, part by part, and the button that writes it. */
export function Effects({ edit, done }: { edit: RuleEdit; done: () => void }) {
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
