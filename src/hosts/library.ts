import * as library from "@odoo/o-spreadsheet";
import type { ComponentConstructor } from "@odoo/owl";
import type { Cell } from "../core/index.js";
import { groupBy } from "./groupBy.js";

/** A cell's address inside the embedded spreadsheet; columns and rows count from 0. */
export type Position = { readonly sheetId: string; readonly col: number; readonly row: number };

/** A block of cells, ends included, counting from 0. */
export type Zone = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };

/** What a cell shows after evaluation. */
export type EvaluatedCell = {
  readonly type: "number" | "text" | "boolean" | "empty" | "error";
  readonly value: Cell;
  readonly message?: string;
  readonly formattedValue: string;
};

/** What a cell holds. */
export type StoredCell =
  | { readonly isFormula: false; readonly content: string; readonly format?: string }
  | {
      readonly isFormula: true;
      readonly compiledFormula: { toFormulaString(getters: Getters): string };
      readonly format?: string;
    };

/** A table of the sheet as the library keeps it; ours exist for their filter buttons. */
export type SheetTable = { readonly range: { readonly zone: Zone } };

/** The questions that can be asked of a model; only those we ask. */
export type Getters = {
  getSheetIds(): readonly string[];
  getSheetName(sheetId: string): string;
  getSheetIdByName(name: string): string | undefined;
  getActiveSheetId(): string;
  getActivePosition(): Position;
  getSelectedZones(): readonly Zone[];
  isRowHidden(sheetId: string, row: number): boolean;
  getNumberCols(sheetId: string): number;
  getNumberRows(sheetId: string): number;
  getCell(position: Position): StoredCell | undefined;
  getCells(sheetId: string): readonly { readonly id: number }[];
  getCellPosition(id: number): Position;
  getEvaluatedCell(position: Position): EvaluatedCell;
  getEvaluatedCellsPositions(sheetId: string): readonly Position[];
  getHeaderGroups(
    sheetId: string,
    dimension: "COL" | "ROW",
  ): readonly { readonly start: number; readonly end: number; readonly isFolded?: boolean }[];
  getCoreTables(sheetId: string): readonly SheetTable[];
  getRangeDataFromZone(sheetId: string, zone: Zone): unknown;
};

/** How a command went; a refused one does not throw. */
export type DispatchResult = { readonly isSuccessful: boolean; readonly reasons: readonly string[] };

/** A command as listeners see it. */
export type Dispatched = {
  readonly type: string;
  readonly sheetId?: string;
  readonly commands?: readonly Dispatched[];
};

/** A workbook as plain data: what the library keeps and loads. Only what we look into has a type. */
export type WorkbookData = {
  readonly sheets: readonly {
    readonly figures: readonly unknown[];
    readonly tables: readonly { readonly range: string; readonly config?: { readonly styleId?: string } }[];
  }[];
};

/** The library's workbook without a page. Its own types do not resolve under `nodenext`, so what we use of it stands here. */
export type Model = {
  dispatch(type: string, payload?: object): DispatchResult;
  readonly getters: Getters;
  readonly selection: {
    selectCell(col: number, row: number): DispatchResult;
    observe(owner: object, callbacks: { handleEvent(event: { readonly mode: string }): void }): void;
    unobserve(owner: object): void;
  };
  on(event: "command-dispatched" | "update", owner: object, callback: (command: Dispatched) => void): void;
  off(event: "command-dispatched" | "update", owner: object): void;
  exportData(): WorkbookData;
  exportXLSX(): Promise<{
    readonly files: readonly ({ path: string; content: string } | { path: string; imageSrc: string })[];
  }>;
  leaveSession(): Promise<void>;
};

/** One parameter of a function, as the library describes it. */
export type ArgumentDefinition = object;

/** The library's answer in place of a value: `value` is the error's name, `message` what the cell shows of it. */
export type EvaluatedError = { readonly value: string; readonly message: string };

/** An entry of the grid's menus; small numbers of `sequence` come first, a `separator` stands below the entry. */
export type MenuItem = {
  readonly name: string;
  readonly sequence: number;
  readonly separator?: boolean;
  readonly execute: () => void;
};

/** The parts of the library that the hosts use, with types. */
export const { Model, Spreadsheet, UIPlugin, EvaluationError, registries, helpers } = library as unknown as {
  Model: new (data?: object, config?: object) => Model;
  /** The grid as a component of the library's framework. */
  Spreadsheet: ComponentConstructor;
  UIPlugin: new (config: object) => { dispatch(type: string, payload: object): DispatchResult };
  EvaluationError: new (message: string, value: string) => EvaluatedError;
  registries: {
    errorTypes: Set<string>;
    featurePluginRegistry: { add(name: string, plugin: unknown): void };
    functionRegistry: { replace(name: string, description: object): void };
    topbarMenuRegistry: { addChild(id: string, path: readonly string[], item: MenuItem): void };
  };
  helpers: {
    arg(definition: string, description: string): ArgumentDefinition;
    isNumber(text: string, locale: object): boolean;
    isDateTime(text: string, locale: object): boolean;
  };
};

const { DEFAULT_LOCALE, setTranslationMethod } = library as unknown as {
  DEFAULT_LOCALE: object;
  setTranslationMethod(translate: (text: string, ...values: unknown[]) => string): void;
};

/** Would the library take this text for a number, a date or a truth value? */
export function looksLikeValue(text: string): boolean {
  return (
    helpers.isNumber(text, DEFAULT_LOCALE) || helpers.isDateTime(text, DEFAULT_LOCALE) || /^(true|false)$/i.test(text)
  );
}

const UNEXPECTED = /^An unexpected error occurred\..*$/;

/** Settings that hold for every model: `#VALUE!` is an error with a message, texts name no product, the log stays quiet. */
function prepareLibrary(): void {
  registries.errorTypes.add("#VALUE!");
  console.debug = () => {};
  if (!("groupBy" in Object)) Object.assign(Object, { groupBy });
  setTranslationMethod((text) => text.replace(UNEXPECTED, "This function failed."));
}

prepareLibrary();
