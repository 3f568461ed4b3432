import { registerCellFunctions, standInForExcel } from "../../hosts/cellFunctions.js";
import { mountPane } from "../../pane/mount.js";
import { fetchListing } from "../functionListing.js";
import { loadCellFunctions } from "../functions.js";
import { NAMESPACE } from "../namespace.js";
import { paneServices } from "../paneServices.js";
import { type Desk, layDesk } from "./desk.js";
import { arrangePage } from "./layout.js";
import { addFileMenu } from "./menu.js";
import "./page.css";

let desk: Desk;

const element = (id: string) => document.getElementById(id) as HTMLElement;

async function start(): Promise<void> {
  arrangePage();
  standInForExcel();
  loadCellFunctions();
  const { listing, shown } = await fetchListing();
  registerCellFunctions(listing, NAMESPACE);
  addFileMenu(() => desk);
  desk = await layDesk(element("grid"));
  mountPane(element("pane"), desk.workbook.host, {
    ...paneServices,
    functions: shown,
    openWorkbook: desk.open,
    saveWorkbook: desk.save,
  });
  document.body.dataset.ready = "yes";
}

void start();
