import { embeddedWorkbook, type Workbook } from "../../hosts/embedded.js";
import { Model } from "../../hosts/library.js";
import { openXlsx, saveXlsx } from "../../hosts/xlsx.js";
import { showGrid } from "./grid.js";
import { ask, notify } from "./messages.js";
import { keep, kept } from "./storage.js";

const XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
const NEW_NAME = "underchassis.xlsx";
const SAVE_AFTER = 700;
/** Keeping a workbook holds the page up, the longer the larger it is: by no more than this share of the time worked. */
const KEEPING_SHARE = 0.2;

/** The workbook on the page: shown, kept in the browser while it is worked on, opened and saved as a file. */
export type Desk = {
  readonly workbook: Workbook;
  readonly open: (file: File) => Promise<void>;
  readonly save: () => Promise<void>;
};

/** Lays the workbook of the last visit, or an empty one, on the page. */
export async function layDesk(element: HTMLElement): Promise<Desk> {
  const last = await lastVisit(element);
  const workbook = embeddedWorkbook(last.model);
  let { name, takeOff } = last;
  let isFileBehind = false;
  keepWhileWorking(
    workbook,
    () => name,
    () => {
      isFileBehind = true;
    },
  );
  const open = async (file: File) => {
    const mayReplace =
      !isFileBehind || (await ask(`Open ${file.name} in place of ${name}? Its last changes are in no file.`));
    if (!mayReplace) return;
    const model = openXlsx(new Uint8Array(await file.arrayBuffer()));
    takeOff();
    takeOff = await showGrid(element, model);
    workbook.replace(model);
    name = file.name;
    isFileBehind = false;
  };
  const save = async () => {
    download(await saveXlsx(workbook.model()), name);
    isFileBehind = false;
  };
  return { workbook, open, save };
}

type Shown = { readonly model: Model; readonly name: string; readonly takeOff: () => void };

async function lastVisit(element: HTMLElement): Promise<Shown> {
  try {
    const last = await kept();
    if (last) return await shown(element, new Model(last.data), last.name);
  } catch {
    notify("The workbook of your last visit could not be shown. Here is an empty one.");
  }
  return shown(element, new Model(), NEW_NAME);
}

async function shown(element: HTMLElement, model: Model, name: string): Promise<Shown> {
  return { model, name, takeOff: await showGrid(element, model) };
}

/** Keeps the workbook soon after each change, and at once when the page goes out of sight. */
function keepWhileWorking(workbook: Workbook, name: () => string, onChange: () => void): void {
  let timer = 0;
  let wait = SAVE_AFTER;
  const now = () => {
    window.clearTimeout(timer);
    timer = 0;
    const start = performance.now();
    const data = workbook.model().exportData();
    wait = Math.max(SAVE_AFTER, (performance.now() - start) / KEEPING_SHARE);
    keep({ name: name(), data }).catch(() => notify("This browser does not keep the workbook. Save it as a file."));
  };
  workbook.host.onChange(() => {
    onChange();
    window.clearTimeout(timer);
    timer = window.setTimeout(now, wait);
  });
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden" && timer !== 0) now();
  });
}

function download(bytes: Uint8Array, name: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([bytes as BlobPart], { type: XLSX }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
