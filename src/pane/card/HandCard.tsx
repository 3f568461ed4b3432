import { Button, Field, Input } from "@fluentui/react-components";
import { useState } from "react";
import { rulesOf } from "../../commands/book.js";
import { sayStep, unsayStep } from "../../commands/decideRows.js";
import { theirCells } from "../../commands/fill.js";
import { fittedStep, openStops, tickStopStep } from "../../commands/fit.js";
import { partsOnce } from "../../commands/once.js";
import type { ViewRow } from "../../commands/openSheet.js";
import { type Wants, wantsOf } from "../../commands/orderBook.js";
import { isBought } from "../../commands/overview.js";
import { inTheWayOf } from "../../commands/standsInTheWay.js";
import { unreadIn } from "../../commands/unread.js";
import { PARTS_SHEET, workOut } from "../../core/index.js";
import { useBench } from "../bench.js";
import { NotRead } from "../kit/NotRead.js";
import { PickRule } from "../kit/PickRule.js";
import { Quiet, Row, Stack } from "../kit/Stack.js";
import { StepButton } from "../kit/StepButton.js";
import type { ScreenProps } from "../screens.js";
import { logDay } from "../when.js";
import { NothingFits } from "./NothingFits.js";
import { OtherList } from "./OtherList.js";
import { PartCard } from "./PartCard.js";
import { PlaceFields } from "./PlaceFields.js";
import { UseQuestion } from "./UseQuestion.js";
import { WhyChain } from "./WhyChain.js";

type PartRow = ViewRow<typeof PARTS_SHEET>;

/** True for a part that is to be bought and has no offer yet. */
const isToFind = (row: PartRow["values"]) => isBought(row) && row.offer === null && row.fitted === null;

/** The card of the part in the hand, with what can be done with it. */
export function HandCard({ row, go }: { row: PartRow } & ScreenProps) {
  const { book, run } = useBench();
  const [opened, setOpened] = useState<"why" | "edit" | null>(null);
  const say = (action: string) => sayStep(book, [row], "action", action, `the action ${action}`);
  const toggle = (which: "why" | "edit") => setOpened(opened === which ? null : which);
  return (
    <Stack>
      <NotRead texts={unreadIn(PARTS_SHEET, row, row.values.designator ?? row.values.id ?? "")} />
      <PartCard
        row={row.values}
        inForce={rulesOf(book, row.values.project)}
        ticked={(row.values.stopsSeen ?? "").split(" ")}
        onTick={(id, on) => void run(tickStopStep(book, row, id, on))}
      />
      <Row>
        <StepButton step={say("replace")} label="Replace" />
        <StepButton step={say("keep")} label="Keep" />
        <Button onClick={() => go("bench")}>{row.values.reading === null ? "Read it" : "Read again"}</Button>
        <Button onClick={() => toggle("why")} aria-expanded={opened === "why"}>
          Why
        </Button>
        <Button onClick={() => toggle("edit")} aria-expanded={opened === "edit"}>
          Edit
        </Button>
        {(row.values.came ?? 0) > 0 && row.values.fitted === null && <Fitted row={row} />}
      </Row>
      <OtherList row={row} />
      <UseQuestion row={row} />
      {isToFind(row.values) && partsOnce(book).includes(row) && <FindOffer row={row} />}
      {opened === "why" && <WhyChain row={row.values} />}
      {opened === "edit" && <EditPart row={row} />}
      {opened === "edit" && <PlaceFields row={row} />}
      <TypedOver row={row} />
    </Stack>
  );
}

/** Why a part that is to be bought has no offer, asked for by a click: all offers are looked through for it. */
function FindOffer({ row }: { row: PartRow }) {
  const { book } = useBench();
  const [wants, setWants] = useState<Wants | null>(null);
  if (!wants) {
    return (
      <div>
        <Button onClick={() => setWants(wantsOf(book))}>Why has it no offer?</Button>
      </div>
    );
  }
  const want = inTheWayOf(row.values.id ?? "", wants);
  if (want) return <NothingFits want={want} wants={wants} />;
  const isAsked = wants.demands.some(({ part }) => part === row.values.id);
  return (
    <Quiet>
      {isAsked
        ? "Offers fit it: find them under Vendors."
        : "It is not asked for: on hold, on the way, or another row buys it."}
    </Quiet>
  );
}

function Fitted({ row }: { row: PartRow }) {
  const { book, services } = useBench();
  const when = logDay(services.now());
  const stops = openStops(row.values);
  if (stops.length > 0) return <Quiet>Tick its stops, then it can be marked as fitted.</Quiet>;
  return <StepButton step={fittedStep(book, row, { when, reading: "" })} label="Fitted" />;
}

/** Cells the user typed over, with the rule's own answer and the way back. */
function TypedOver({ row }: { row: PartRow }) {
  const { book } = useBench();
  const keys = theirCells(row);
  if (keys.length === 0) return null;
  const empty = Object.fromEntries(keys.map((key) => [key, null]));
  const ruled = workOut({ ...row.values, ...empty }, rulesOf(book, row.values.project));
  return (
    <Stack title="Typed by you" isCard>
      {keys.map((key) => (
        <Row key={key}>
          <span>
            {PARTS_SHEET.columns[key].head}: {String(row.values[key])}; the rules say {String(ruled[key] ?? "nothing")}
          </span>
          <StepButton step={unsayStep(book, row, key)} label="Take back" />
        </Row>
      ))}
    </Stack>
  );
}

/** Parts of a set with the same mark have to be alike: one offer serves them all. */
function Alike({ row }: { row: PartRow }) {
  const { book } = useBench();
  const [mark, setMark] = useState(row.values.alike ?? "");
  const hint =
    "Any mark, such as A: parts of this set with the same one are bought from one offer (pairs, balanced arms).";
  return (
    <Row>
      <Field label="Alike" hint={hint}>
        <Input value={mark} onChange={(_, { value }) => setMark(value)} />
      </Field>
      {mark !== (row.values.alike ?? "") && (
        <StepButton step={sayStep(book, [row], "alike", mark, mark === "" ? "no mark" : `the mark ${mark}`)} />
      )}
    </Row>
  );
}

function EditPart({ row }: { row: PartRow }) {
  const { book, run } = useBench();
  const { rules } = rulesOf(book, row.values.project);
  const give = (key: "type" | "usedAs", label: string, what: string) =>
    void run(sayStep(book, [row], key, label, `the ${what} ${label}`), true);
  return (
    <Stack title="What it is" isCard>
      <PickRule
        label="Type"
        rules={rules.filter(({ scope, kind }) => scope === "class" && (kind === null || kind === row.values.kind))}
        value={row.values.type}
        onPick={(label) => give("type", label, "type")}
      />
      <PickRule
        label="Used as"
        hint="Look which tube pin or supply it hangs on."
        rules={rules.filter(({ scope }) => scope === "role")}
        value={row.values.usedAs}
        onOpen={() => give("usedAs", "", "use")}
        onPick={(label) => give("usedAs", label, "use")}
      />
      <Alike row={row} />
    </Stack>
  );
}
