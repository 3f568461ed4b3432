import type { Model } from "../../hosts/library.js";

/** The grid draws charts with this global, which its library leaves to the page to bring. */
async function loadCharts(): Promise<void> {
  const { Chart, registerables, ...parts } = await import("chart.js");
  Chart.register(...registerables);
  Object.assign(window, { Chart: Object.assign(Chart, parts) });
}

/** Has charts ready when they are needed: before the grid shows a workbook that holds some, else once it is idle. */
export async function readyCharts(model: Model): Promise<void> {
  if ("Chart" in window) return;
  const isNeeded = model.exportData().sheets.some((sheet) => sheet.figures.length > 0);
  if (isNeeded) await loadCharts();
  else setTimeout(() => void loadCharts(), 1500);
}
