import type { CellFunction } from "../../src/start/reference/catalogue.js";

/** The functions of a catalogue by id, loaded in Node; they take and give cells row by row. */
export async function loadFunctions(
  functions: readonly CellFunction[],
): Promise<Map<string, (...cells: unknown[]) => unknown[][]>> {
  const loaded = functions.map(async ({ id, exported, file }) => {
    const module = await import(`../../src/functions/${file.replace(/\.ts$/, "")}.ts`);
    return [id, module[exported]] as const;
  });
  return new Map(await Promise.all(loaded));
}
