import { type FunctionListing, registerCellFunctions, standInForExcel } from "../../hosts/cellFunctions.js";
import { loadCellFunctions } from "../functions.js";
import { NAMESPACE } from "../namespace.js";
import { type Desk, layDesk } from "./desk.js";
import { arrangePage, goTo } from "./layout.js";
import { addFileMenu } from "./menu.js";
import "./page.css";

let desk: Desk;

async function start(): Promise<void> {
  arrangePage();
  standInForExcel();
  loadCellFunctions();
  const listing: FunctionListing = await (await fetch("functions.json")).json();
  registerCellFunctions(listing, NAMESPACE);
  addFileMenu(() => desk);
  desk = await layDesk(document.getElementById("grid") as HTMLElement);
  document.body.dataset.ready = "yes";
  void goTo;
}

void start();
