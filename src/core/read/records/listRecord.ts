import type { ListRow, Role } from "../layout/row.js";

/** A row with its names written out and what ditto marks, arrows and repeating blanks stand for filled in. */
export type ListRecord = ListRow & {
  readonly names: readonly string[];
  readonly partNumber: string | null;
  readonly borrowed: ReadonlySet<Role>;
  /** How many like circuits each of its names stands for; one if left out. */
  readonly circuits?: number;
};
