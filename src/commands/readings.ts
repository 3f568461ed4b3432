import {
  attempt,
  type IN_PLACE,
  joinReadings,
  kindNamed,
  type PARTS_SHEET,
  type PartsRow,
  READINGS_SHEET,
  type RulesInForce,
  readReadings,
  slipOf,
  type TypedReading,
  type WorkedOut,
  workOut,
  writeValue,
} from "../core/index.js";
import { type Book, rulesOf } from "./book.js";
import { unanswered } from "./fill.js";
import { otherRows, withOtherRows } from "./once.js";
import type { ViewRow } from "./openSheet.js";
import { counted, nothingToDo, type Step } from "./step.js";
import { renewed } from "./values.js";
import { addRows, patchRows, type RowCells } from "./writeSheet.js";

type PartRow = ViewRow<typeof PARTS_SHEET>;

/** What was read of one part. `accuracy` is the meter's, as a ratio; null leaves what the row says of it. */
export type Taken = {
  readonly row: PartRow;
  readonly readings: readonly TypedReading[];
  readonly inPlace: (typeof IN_PLACE)[number];
  readonly accuracy: number | null;
  readonly remark: string | null;
};

/** What a row of Parts says with a reading in it. */
export type Told = Pick<PartsRow, "reading" | "inPlace" | "accuracy"> & WorkedOut;

/** The readings that a row holds and that a new one joins: those taken the same way. */
function knownOf({ reading, inPlace, value, kind }: PartsRow, wanted: Taken["inPlace"]): readonly TypedReading[] {
  if (reading === null || (inPlace ?? "in place") !== wanted) return [];
  return attempt(
    () => readReadings(reading, value, kindNamed(kind)),
    () => [],
  );
}

/**
 * What a row of Parts will say of a reading, before it is written.
 *
 * A reading of another quantity, taken the same way, stays beside it: a capacitor's leakage beside its capacitance.
 *
 * @throws PartsError where a figure of the row cannot be read.
 */
export function tellsOf({ row, readings, inPlace, accuracy }: Taken, inForce: RulesInForce): Told {
  const read = {
    reading: joinReadings(knownOf(row.values, inPlace), readings),
    inPlace,
    accuracy: accuracy ?? row.values.accuracy,
  };
  return { ...read, ...workOut({ ...unanswered(row), ...read }, inForce) };
}

/** What a bare figure may have been meant as, where the printed unit puts it far off; as text, else null. */
export function slipText({ row: { values }, readings }: Taken): string | null {
  const slips = readings.map((read) => slipOf(read, values.size ?? 0));
  const slip = slips.find((each) => each !== null) ?? null;
  return slip === null ? null : `If you mean ${writeValue(slip, kindNamed(values.kind))}, write its unit.`;
}

type Logged = {
  readonly taken: Taken;
  readonly cells: RowCells<typeof PARTS_SHEET>;
  readonly told: Told;
};

/** Each reading in turn, so that a part read twice in one go joins its own first reading. */
function logged(book: Book, all: readonly Taken[]): readonly Logged[] {
  const asRead = new Map<number, PartsRow>();
  const sets = [...new Set(all.map(({ row }) => row.values.project))];
  const inForce = new Map(sets.map((short) => [short, rulesOf(book, short)]));
  return all.map((taken) => {
    const { at, values } = taken.row;
    const row = { ...taken.row, values: asRead.get(at) ?? values };
    const told = tellsOf({ ...taken, row }, inForce.get(values.project)!);
    const { reading, inPlace, accuracy } = told;
    asRead.set(at, { ...row.values, reading, inPlace, accuracy });
    const lifted = inPlace === "lifted" ? "yes" : null;
    const cells = { reading, inPlace, lifted, ...(accuracy === null ? {} : { accuracy }), ...renewed(taken.row, told) };
    return { taken, cells, told };
  });
}

/** The rows of the log for what was read of one part: one for each quantity. */
const logRows = (when: string, { taken, told: { verdict } }: Logged): readonly RowCells<typeof READINGS_SHEET>[] =>
  taken.readings.map(({ text, value }) => {
    const { id, designator } = taken.row.values;
    const { inPlace, accuracy, remark } = taken;
    return { when, id, designator, reading: text, size: value, inPlace, accuracy, verdict, remark };
  });

/**
 * Logs readings: the log in Readings gets a row for each, and Parts shows the last of each part, in all lists that name it. One undo takes
 * all back.
 *
 * @param when As the log shall say it.
 * @throws PartsError where a figure of a row cannot be read.
 */
export function logReadingsStep(book: Book, all: readonly Taken[], when: string): Step {
  if (!book.parts || all.length === 0) return nothingToDo("There is nothing to log");
  const done = logged(book, all);
  const others = otherRows(book);
  const lifted = [...new Set(all.filter(({ inPlace }) => inPlace === "lifted").map(({ row }) => nameOfPart(row)))];
  return {
    name: nameOf(all),
    changes: [
      ...patchRows(
        book.parts,
        done.flatMap(({ taken: { row }, cells }) =>
          [row, ...(others.get(row.values) ?? [])].map(({ at }) => ({ at, cells })),
        ),
      ),
      ...addRows(
        book.readings,
        READINGS_SHEET,
        done.flatMap((each) => logRows(when, each)),
      ),
    ],
    overwrites: [],
    notes: [
      ...buying(done),
      ...(lifted.length > 0 ? [`${lifted.join(", ")}: a lead is lifted until you say it is back.`] : []),
    ],
  };
}

/** A part with its section, for R1 stands in each. */
const nameOfPart = ({ values }: PartRow) => [values.designator, values.section].filter(Boolean).join(" ");

/** What the readings change of the list of what to order. */
function buying(done: readonly Logged[]): readonly string[] {
  const last = new Map(done.map((each) => [each.taken.row, each.told.action]));
  const names = (fits: (was: string | null, will: string | null) => boolean) =>
    [...last].filter(([row, will]) => fits(row.values.action, will)).map(([row]) => nameOfPart(row));
  const more = names((was, will) => was !== "replace" && will === "replace");
  const less = names((was, will) => was === "replace" && will !== "replace");
  return [
    ...(more.length > 0 ? [`Now to be bought: ${more.join(", ")}.`] : []),
    ...(less.length > 0 ? [`No longer to be bought: ${less.join(", ")}.`] : []),
  ];
}

function nameOf(all: readonly Taken[]): string {
  const [only, ...others] = all;
  if (!only || others.length > 0) return `Log ${counted(all.length, "reading")}`;
  return `Log ${only.row.values.designator} ${joinReadings([], only.readings)} ${only.inPlace}`;
}

/** Says that the lifted leads of these rows are back. */
export function leadsBackStep(book: Book, rows: readonly PartRow[]): Step {
  if (!book.parts || rows.length === 0) return nothingToDo("No lead is lifted");
  const names = rows.map((row) => row.values.designator).join(", ");
  const changes = patchRows(
    book.parts,
    withOtherRows(book, rows).map((row) => ({ at: row.at, cells: { lifted: "" } })),
  );
  return { name: `${names}: lead is back`, changes, overwrites: [], notes: [] };
}
