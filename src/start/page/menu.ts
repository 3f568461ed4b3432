import { registries } from "../../hosts/library.js";
import type { Desk } from "./desk.js";
import { notify } from "./messages.js";

/** Opening and saving in the File menu of the grid, beside what the library brings. */
export function addFileMenu(desk: () => Desk): void {
  const { topbarMenuRegistry } = registries;
  topbarMenuRegistry.addChild("open_workbook", ["file"], {
    name: "Open a workbook (.xlsx)",
    sequence: 1,
    execute: async () => {
      const file = await chosenFile();
      if (file) await said(() => desk().open(file));
    },
  });
  topbarMenuRegistry.addChild("save_workbook", ["file"], {
    name: "Save as .xlsx",
    sequence: 2,
    separator: true,
    execute: () => said(() => desk().save()),
  });
}

async function said(work: () => Promise<void>): Promise<void> {
  try {
    await work();
  } catch (error) {
    notify(error instanceof Error ? error.message : String(error));
  }
}

function chosenFile(): Promise<File | null> {
  const input = document.createElement("input");
  input.type = "file";
  input.accept = ".xlsx";
  return new Promise((resolve) => {
    input.addEventListener("change", () => resolve(input.files?.[0] ?? null));
    input.addEventListener("cancel", () => resolve(null));
    input.click();
  });
}
