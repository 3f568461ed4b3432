import { excelHost } from "../../hosts/excel.js";
import { mountPane } from "../../pane/mount.js";
import { fetchListing } from "../functionListing.js";
import { loadCellFunctions } from "../functions.js";
import { paneServices } from "../paneServices.js";

loadCellFunctions();

async function start(): Promise<void> {
  await Office.onReady();
  const { shown } = await fetchListing();
  const services = { ...paneServices, functions: shown, openWorkbook: null, saveWorkbook: null };
  mountPane(document.getElementById("pane") as HTMLElement, excelHost(), services);
}

void start();
