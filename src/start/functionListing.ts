import type { FunctionListing } from "../hosts/cellFunctions.js";
import type { ListedFunction } from "../pane/functionListing.js";

/** The cell functions as the build lists them, for registering them, and in chapters with one example each, for the pane. */
export async function fetchListing(): Promise<{ listing: FunctionListing; shown: readonly ListedFunction[] }> {
  const [listing, chapters] = await Promise.all([
    fetched<FunctionListing>("functions.json"),
    fetched<readonly Chapter[]>("chapters.json"),
  ]);
  const described = new Map(listing.functions.map((one) => [one.id, one]));
  const shown = chapters.flatMap(({ title, functions }) =>
    functions.map(({ id, example }) => ({ ...described.get(id)!, example, chapter: title })),
  );
  return { listing, shown };
}

type Chapter = {
  readonly title: string;
  readonly functions: readonly { readonly id: string; readonly example: string }[];
};

const fetched = async <T>(name: string): Promise<T> => (await fetch(name)).json();
