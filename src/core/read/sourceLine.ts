/**
 * One line of a source: a line of text, a record of a CSV file, a row of a sheet, a line on a page.
 *
 * `number` is 1-based and is where the record starts (a quoted cell may run over several lines: then `text` holds line
 * breaks). `cells` is null where the source has no columns of its own.
 */
export type SourceLine = {
  readonly number: number;
  readonly text: string;
  readonly cells: readonly string[] | null;
};
