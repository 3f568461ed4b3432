/** A cell function as its metadata describes it: as much as the pane shows. */
export type ListedFunction = {
  readonly id: string;
  /** What it is about; functions on one subject stand together. */
  readonly chapter: string;
  readonly description?: string;
  readonly helpUrl?: string;
  /** A call and what it gives: `LUG.NAME(...) -> answer`. */
  readonly example?: string;
  readonly parameters: readonly { readonly name: string; readonly description?: string; readonly optional?: boolean }[];
};
