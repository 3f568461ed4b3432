/**
 * Loads every file of cell functions; the bundler appends to each the lines that register what it exports with the
 * global `CustomFunctions`, which is Excel's own or our stand-in.
 */
export function loadCellFunctions(): void {
  const files = import.meta.webpackContext("../functions", { regExp: /\.ts$/ });
  for (const file of files.keys()) files(file);
}
