/** One case as a file gives it: the class and use as ids of rule rows, the line of the list, and figures under any usual name. */
export type Case = {
  readonly id: string;
  readonly cls: string;
  readonly role?: string | null;
  readonly equipment?: string;
  readonly partsListLine?: string;
  readonly context?: string;
  readonly given?: Readonly<Record<string, unknown>>;
};

/** The cases of a file: `{ cases: [...] }`, a list, or one case. @throws Error where the text holds none. */
export function casesOf(text: string): readonly Case[] {
  const read: unknown = JSON.parse(text);
  const list = Array.isArray(read) ? read : ((read as { cases?: unknown }).cases ?? [read]);
  if (!Array.isArray(list) || !list.every((one) => typeof (one as Case)?.cls === "string"))
    throw new Error('Cases look like { "cases": [{ "id", "cls", "role", "partsListLine", "given" }] }.');
  return list as Case[];
}
