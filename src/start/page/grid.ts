import { App, Component, useState as observed, reactive, xml } from "@odoo/owl";
import "bootstrap/dist/css/bootstrap.min.css";
import "font-awesome/css/font-awesome.min.css";
import "@odoo/o-spreadsheet/dist/o_spreadsheet.css";
import templates from "@odoo/o-spreadsheet/dist/o_spreadsheet.xml";
import { type Model, Spreadsheet } from "../../hosts/library.js";
import { readyCharts } from "./charts.js";
import { ask, notify } from "./messages.js";
import { mendedTemplates } from "./templates.js";

/** Below this width of the grid the library leaves its menus out and puts the formula bar at the foot. */
const SMALL = 560;

const dark = matchMedia("(prefers-color-scheme: dark)");

/** What the grid is shown with; changing it shows the change. */
const shown = reactive({ colorScheme: dark.matches ? "dark" : "light" });
dark.addEventListener("change", () => {
  shown.colorScheme = dark.matches ? "dark" : "light";
});

/** The library's spreadsheet as a component of its framework, which asks for a class. */
class Grid extends Component {
  static override template =
    xml`<Spreadsheet model="props.model" colorScheme="shown.colorScheme" notifyUser="notifyUser" raiseError="raiseError" askConfirmation="askConfirmation"/>`;
  static components = { Spreadsheet };
  static override props = ["model"];
  shown = observed(shown);
  notifyUser = (notice: { readonly text: string }) => notify(notice.text);
  raiseError = (text: string, after?: () => void) => {
    notify(text);
    after?.();
  };
  askConfirmation = async (text: string, confirm: () => void, cancel?: () => void) =>
    (await ask(text)) ? confirm() : cancel?.();
}

/**
 * Shows a workbook in an element.
 *
 * @returns Takes it off again; another workbook needs another grid.
 */
export async function showGrid(element: HTMLElement, model: Model): Promise<() => void> {
  const env = {
    get isSmall() {
      return element.clientWidth < SMALL;
    },
  };
  const app = new App(Grid, { props: { model }, env, translateFn: (text) => text });
  app.addTemplates(mendedTemplates(templates));
  await readyCharts(model);
  element.replaceChildren();
  await app.mount(element);
  return () => app.destroy();
}

/** Puts the keyboard into the cells. */
export function focusGrid(element: HTMLElement): void {
  element.querySelector<HTMLElement>(".o-grid .o-composer")?.focus();
}
