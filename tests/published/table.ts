/** How a figure is known: read in the source, worked out from stated inputs beside it, or recalled from a source not at hand. */
export type Status = "seen" | "computed" | "from memory";

/** One published figure and how to get ours. */
export type Check = {
  readonly of: string;
  readonly given: string;
  readonly value: unknown;
  readonly found: () => unknown;
  /** The widest difference that the source's own rounding explains, as a ratio of the figure. */
  readonly within: number;
  readonly source: string;
  readonly locator: string;
  readonly status: Status;
};

/** What a table is of, and where all its rows come from. */
export type About = {
  readonly of: string;
  readonly source: string;
  readonly locator?: string;
  readonly status?: Status;
  readonly within?: number;
};

/**
 * A table of published figures: what is given, what the source says, and one function that works all of them out.
 *
 * @example table({ of: "ohms of bands", source: "IEC 60062" }, ohms, [["brown black black gold", 10]])
 */
export function table<G>(
  about: About,
  by: (given: G) => unknown,
  rows: readonly (readonly [given: G, value: unknown])[],
): readonly Check[] {
  return rows.map(([given, value]) => ({
    of: about.of,
    given: typeof given === "string" ? given : JSON.stringify(given),
    value,
    found: () => by(given),
    within: about.within ?? 1e-9,
    source: about.source,
    locator: about.locator ?? "",
    status: about.status ?? "seen",
  }));
}
