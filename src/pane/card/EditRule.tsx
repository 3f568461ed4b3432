import { Button, Checkbox, Field, Input } from "@fluentui/react-components";
import { useState } from "react";
import { effectsOf, type RuleEdit, ruleEditStep } from "../../commands/rulesChange.js";
import { addRuleStep, restoreEdit } from "../../commands/rulesRows.js";
import { cellIn } from "../../commands/writeSheet.js";
import { type Columns, RULES_SHEET, type RulesRow } from "../../core/index.js";
import { useBench } from "../bench.js";
import { CellField } from "../kit/CellField.js";
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

/** What the columns of Rules hold, whichever they are. */
const COLUMNS: Columns = RULES_SHEET.columns;

/** Why a text can't stand in a column of Rules; nothing where it can. */
const faultOf = (key: Key, text: string): string | undefined =>
  text !== "" && COLUMNS[key]!.read(text) === null ? COLUMNS[key]!.wants : undefined;

/** One row of Rules, every column of it: an edit shows which parts change before it is written. */
export function EditRule({ row }: { row: RulesRow }) {
  const [cells, setCells] = useState<Readonly<Partial<Record<Key, string>>>>({});
  const [isAll, setAll] = useState(false);
  const set = (key: Key, value: string) => setCells({ ...cells, [key]: value });
  const textOf = (key: Key) => cells[key] ?? String(cellIn(RULES_SHEET, key, row));
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
      {[...ACTION_KEYS, ...OFTEN, ...(isAll ? SELDOM : [])].map((key) => (
        <CellField
          key={key}
          label={COLUMNS[key]!.head}
          text={textOf(key)}
          words={COLUMNS[key]!.words}
          empty="no say"
          fault={faultOf(key, textOf(key))}
          onText={(text) => set(key, text)}
        />
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
