import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import { type FunctionListing, registerCellFunctions, standInForExcel } from "../hosts/cellFunctions.js";
import { functionFiles } from "./bundle/functionFiles.js";
import { NAMESPACE } from "./namespace.js";

/**
 * Makes all cell functions work in the embedded spreadsheet under Node: in tests and in npm scripts.
 *
 * @returns What the metadata tool reads from the functions' comments.
 */
export async function registerFromSources(): Promise<FunctionListing> {
  standInForExcel();
  const files = functionFiles();
  const { metadataJson, associate, errors } = await generateCustomFunctionsMetadata(files);
  if (errors.length > 0) throw new Error(errors.join("\n"));
  const modules = new Map<string, Record<string, unknown>>();
  for (const file of files) modules.set(file, await import(file));
  for (const { id, functionName, sourceFileName } of associate) {
    const work = modules.get(sourceFileName)?.[functionName];
    CustomFunctions.associate(id, work as (...args: unknown[]) => unknown);
  }
  const listing: FunctionListing = JSON.parse(metadataJson || '{"functions":[]}');
  registerCellFunctions(listing, NAMESPACE);
  return listing;
}
