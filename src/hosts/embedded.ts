import { sheetIdOf, writeInto } from "./embeddedWrite.js";
import type { Change, Host, HostCell, Marked, Place, SheetCells } from "./host.js";
import { type Dispatched, type Model, type Position, registries, UIPlugin } from "./library.js";
import type { Step } from "./step.js";

/** The embedded spreadsheet behind the host's door, and the workbook that stands in it now. */
export type Workbook = {
  readonly host: Host;
  readonly model: () => Model;
  /** Puts another workbook in its place; who listens to the host goes on listening. */
  readonly replace: (model: Model) => void;
};

type Listeners = { readonly onSelect: Set<(place: Place) => void>; readonly onChange: Set<(sheet: string) => void> };

/**
 * A host that works on a workbook of the embedded library. It needs no page: it runs in Node as well.
 *
 * @example embeddedWorkbook(new Model()).host.write([{ kind: "sheet", sheet: "Parts" }], "New sheet")
 */
export function embeddedWorkbook(first: Model): Workbook {
  let model = first;
  const listeners: Listeners = { onSelect: new Set(), onChange: new Set() };
  let stop = listen(model, listeners);
  const replace = (next: Model) => {
    stop();
    model = next;
    stop = listen(model, listeners);
    for (const sheet of sheetNames(model)) for (const listener of listeners.onChange) listener(sheet);
    for (const listener of listeners.onSelect) listener(placeIn(model));
  };
  return { host: hostOf(() => model, listeners), model: () => model, replace };
}

function hostOf(model: () => Model, listeners: Listeners): Host {
  return {
    sheets: async () => sheetNames(model()),
    read: async (sheet) => readSheet(model(), sheet),
    write: async (changes) => writeAsOne(model(), changes),
    selection: async () => placeIn(model()),
    marked: async () => markedIn(model()),
    select: async (place) => moveTo(model(), place),
    onSelect: (listener) => added(listeners.onSelect, listener),
    onChange: (listener) => added(listeners.onChange, listener),
  };
}

function added<T>(listeners: Set<T>, listener: T): () => void {
  listeners.add(listener);
  return () => void listeners.delete(listener);
}

function sheetNames(model: Model): readonly string[] {
  return model.getters.getSheetIds().map((id) => model.getters.getSheetName(id));
}

function readSheet(model: Model, sheet: string): SheetCells | null {
  const sheetId = model.getters.getSheetIdByName(sheet);
  if (sheetId === undefined) return null;
  const filled = model.getters
    .getEvaluatedCellsPositions(sheetId)
    .map((at) => ({ at, cell: cellAt(model, at) }))
    .filter(({ cell }) => cell.value !== null || cell.formula !== null);
  const height = filled.reduce((most, { at }) => Math.max(most, at.row + 1), 0);
  const width = filled.reduce((most, { at }) => Math.max(most, at.col + 1), 0);
  const rows = Array.from({ length: height }, () => new Array<HostCell>(width).fill(EMPTY));
  for (const { at, cell } of filled) rows[at.row]![at.col] = cell;
  return { sheet, rows };
}

const EMPTY: HostCell = { value: null, formula: null };

function cellAt(model: Model, at: Position): HostCell {
  const stored = model.getters.getCell(at);
  const formula = stored?.isFormula ? stored.compiledFormula.toFormulaString(model.getters) : null;
  const { value } = model.getters.getEvaluatedCell(at);
  return { value: value === "" && formula === null ? null : value, formula };
}

function placeIn(model: Model): Place {
  const at = model.getters.getActivePosition();
  return { sheet: model.getters.getSheetName(at.sheetId), row: at.row, column: at.col };
}

function markedIn(model: Model): Marked {
  const { getters } = model;
  const sheetId = getters.getActiveSheetId();
  const rows = getters
    .getSelectedZones()
    .flatMap(({ top, bottom }) => Array.from({ length: bottom - top + 1 }, (_, index) => top + index));
  const seen = rows.filter((row) => !getters.isRowHidden(sheetId, row));
  return { sheet: getters.getSheetName(sheetId), spans: seen.map((row) => ({ first: row, last: row })) };
}

function moveTo(model: Model, place: Place): void {
  const sheetIdTo = sheetIdOf(model, place.sheet);
  const sheetIdFrom = model.getters.getActiveSheetId();
  if (sheetIdFrom !== sheetIdTo) model.dispatch("ACTIVATE_SHEET", { sheetIdFrom, sheetIdTo });
  model.selection.selectCell(place.column, place.row);
}

const TOGETHER = "WRITE_TOGETHER";

type Together = { readonly type: string; readonly work: (run: (step: Step) => void) => void };

/** The library calls plugins by class: this one runs many commands inside one, for one evaluation and one undo. */
class TogetherPlugin extends UIPlugin {
  handle(command: Together): void {
    if (command.type !== TOGETHER) return;
    command.work(([type, payload]) => {
      const { isSuccessful, reasons } = this.dispatch(type, payload);
      const isRefused = !isSuccessful && reasons.some((reason) => reason !== "NoChanges");
      if (isRefused) throw new Error(`The sheet refused a change (${type}: ${reasons.join(", ")}).`);
    });
  }
}

registries.featurePluginRegistry.add("write_together", TogetherPlugin);

/** All or nothing: what was done before a refused step is taken back. */
function writeAsOne(model: Model, changes: readonly Change[]): void {
  let failure: unknown = null;
  let done = 0;
  const work: Together["work"] = (run) => {
    try {
      writeInto(model, changes, (steps) => {
        for (const step of steps) {
          run(step);
          done += 1;
        }
      });
    } catch (error) {
      failure = error;
    }
  };
  model.dispatch(TOGETHER, { work });
  if (failure === null) return;
  if (done > 0) model.dispatch("REQUEST_UNDO");
  throw failure;
}

const CHANGES_CELLS = new Set([
  ..."UPDATE_CELL UPDATE_CELL_POSITION CLEAR_CELL CLEAR_CELLS DELETE_CONTENT ADD_COLUMNS_ROWS".split(" "),
  ..."REMOVE_COLUMNS_ROWS CREATE_SHEET RENAME_SHEET DELETE_SHEET".split(" "),
]);

/** Tells of changed sheets and of a moved selection once for all that happens in one go; never while the user writes. */
function listen(model: Model, listeners: Listeners): () => void {
  const owner = {};
  const changed = new Set<string>();
  let last = JSON.stringify(placeIn(model));
  let isDue = false;
  const note = (command: Dispatched): void => {
    if (CHANGES_CELLS.has(command.type) && command.sheetId) changed.add(command.sheetId);
    if (command.type === "UNDO" || command.type === "REDO") command.commands?.forEach(note);
  };
  const tellSoon = (): void => {
    if (!isDue) queueMicrotask(tell);
    isDue = true;
  };
  const tell = (): void => {
    isDue = false;
    const names = [...changed].flatMap((id) =>
      model.getters.getSheetIds().includes(id) ? [model.getters.getSheetName(id)] : [],
    );
    changed.clear();
    for (const name of names) for (const listener of listeners.onChange) listener(name);
    const place = placeIn(model);
    if (JSON.stringify(place) === last) return;
    last = JSON.stringify(place);
    for (const listener of listeners.onSelect) listener(place);
  };
  model.on("command-dispatched", owner, note);
  model.on("update", owner, tellSoon);
  model.selection.observe(owner, { handleEvent: tellSoon });
  return () => {
    model.off("command-dispatched", owner);
    model.off("update", owner);
    model.selection.unobserve(owner);
  };
}
