import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import vm from "node:vm";
import { type Book, workbookOf } from "./objects.js";
import { entered, formatAt, keyOf, newSheet, type Sheet } from "./sheet.js";
import { type Message, wireTo } from "./wire.js";

/** A strict stand-in for Excel behind Microsoft's own proxies. */
export type FakeExcel = {
  readonly book: Book;
  readonly sheet: (name: string) => Sheet;
  readonly undo: () => void;
  readonly type: (sheet: string, row: number, column: number, text: string) => void;
  /** Requests since the last look at this number. */
  readonly requests: () => number;
  /** From now on every request is refused with this code; null ends it. */
  readonly refuseWith: (code: string | null) => void;
};

type Proxies = {
  readonly Excel: typeof Excel;
  readonly OfficeExtension: typeof OfficeExtension & {
    ClientRequestContext: { prototype: object };
    GenericEventRegistration: { s_genericEventRegistrations: object };
    _testSetRichApiMessageReadyImpl(ready: () => Promise<void>): void;
    _testTriggerRichApiMessageEvent(message: object): void;
  };
};

let executor: (message: Message) => unknown;
let onSelected: (() => void)[] = [];
let proxies: Proxies | null = null;

/** Microsoft's library, loaded once as on a page, with our executor in place of Excel. */
function loadProxies(): Proxies {
  const file = createRequire(import.meta.url).resolve("@microsoft/office-js/dist/excel-web-16.00.debug.js");
  const page: Record<string, unknown> = {
    navigator: { userAgent: "test" },
    location: { href: "https://localhost/" },
    document: { getElementsByTagName: () => [], URL: "https://localhost/" },
    ...{ setTimeout, clearTimeout, setInterval, clearInterval, console: { ...console, log: () => {} } },
  };
  Object.assign(page, { window: page, self: page });
  vm.runInContext(readFileSync(file, "utf8"), vm.createContext(page), { filename: "excel.js" });
  const loaded = page as unknown as Proxies & { Office: object };
  Object.defineProperty(loaded.OfficeExtension.ClientRequestContext.prototype, "_requestExecutor", {
    get: () => ({ executeAsync: async (_data: unknown, _flags: number, message: Message) => executor(message) }),
    set: () => {},
  });
  loaded.OfficeExtension._testSetRichApiMessageReadyImpl(async () => {});
  loaded.Office = Object.create(loaded.Office, { context: { value: { document: selectionEvents() } } });
  return loaded;
}

function selectionEvents() {
  type Done = (result: { status: string }) => void;
  return {
    addHandlerAsync: (_type: string, handler: () => void, done: Done) => {
      onSelected.push(handler);
      done({ status: "succeeded" });
    },
    removeHandlerAsync: (_type: string, { handler }: { handler: () => void }, done: Done) => {
      onSelected = onSelected.filter((one) => one !== handler);
      done({ status: "succeeded" });
    },
  };
}

/** A new workbook with one empty sheet; `Excel` is global, as in an add-in. */
export function startExcel(): FakeExcel {
  proxies ??= loadProxies();
  proxies.OfficeExtension.GenericEventRegistration.s_genericEventRegistrations = {};
  onSelected = [];
  const book: Book = { sheets: [newSheet("{1}", "Sheet1")], active: { sheet: "Sheet1", row: 0, column: 0 } };
  const past: Book[] = [];
  let [requests, refusal]: [number, string | null] = [0, null];
  const changed = (worksheetId: string) => queueMicrotask(() => tellChanged(worksheetId));
  const selected = () => queueMicrotask(() => onSelected.forEach((handler) => void handler()));
  const wire = wireTo(() => workbookOf(book, { selected, changed }));
  executor = (message) => {
    requests += 1;
    return refusal === null ? wire(message) : { ...refused(refusal) };
  };
  const { run } = proxies.Excel;
  const runOnce = (...given: unknown[]): unknown => {
    const isOneUndo = (given[0] as { mergeUndoGroup?: boolean }).mergeUndoGroup;
    if (isOneUndo) past.push(structuredClone(book));
    return Reflect.apply(run, proxies!.Excel, given);
  };
  Object.assign(globalThis, { Excel: Object.assign(Object.create(proxies.Excel), { run: runOnce }) });
  const sheet = (name: string) => book.sheets.find((one) => one.name === name)!;
  return {
    book,
    sheet,
    undo: () => void Object.assign(book, past.pop()),
    type: (name, row, column, text) => {
      const stored = entered(text, formatAt(sheet(name), row, column));
      if (stored) sheet(name).cells[keyOf(row, column)] = stored;
      changed(sheet(name).id);
    },
    requests: () => {
      const counted = requests;
      requests = 0;
      return counted;
    },
    refuseWith: (code) => {
      refusal = code;
    },
  };
}

function refused(code: string): object {
  const body = { Error: { Code: code, Message: code }, Results: [] };
  return { ErrorCode: "", ErrorMessage: "", Headers: {}, Body: body };
}

function tellChanged(worksheetId: string): void {
  const message = JSON.stringify({ worksheetId, address: "A1", changeType: 0, source: 0 });
  const entry = { messageCategory: 65536, messageType: 10, targetId: "Workbook", message };
  proxies!.OfficeExtension._testTriggerRichApiMessageEvent({ entries: [entry] });
}
