import { excelHost } from "../../hosts/excel.js";
import { mountPane } from "../../pane/mount.js";
import { loadCellFunctions } from "../functions.js";
import { paneServices } from "../paneServices.js";

loadCellFunctions();

async function start(): Promise<void> {
  await Office.onReady();
  const { functions } = await (await fetch("functions.json")).json();
  const services = { ...paneServices, functions, openWorkbook: null, saveWorkbook: null };
  mountPane(document.getElementById("pane") as HTMLElement, excelHost(), services);
}

void start();
