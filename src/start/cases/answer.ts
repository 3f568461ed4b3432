/** One answer as it is printed: base units, ratios, ids of the rules' tables. */
export type Answer = Readonly<Record<string, unknown>>;
