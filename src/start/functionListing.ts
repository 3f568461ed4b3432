import type { FunctionListing } from "../hosts/cellFunctions.js";
import type { ListedFunction } from "../pane/functionListing.js";

/** The cell functions as the build lists them, for registering them, and with one example each, for the pane. */
export async function fetchListing(): Promise<{ listing: FunctionListing; shown: readonly ListedFunction[] }> {
  const [listing, examples] = await Promise.all([
    fetched<FunctionListing>("functions.json"),
    fetched<Examples>("examples.json"),
  ]);
  return { listing, shown: listing.functions.map((one) => ({ ...one, example: examples[one.id] })) };
}

type Examples = Readonly<Record<string, string>>;

const fetched = async <T>(name: string): Promise<T> => (await fetch(name)).json();
