/** TABLE: shares of a rating that published derating policies allow, to edit and not to claim. */
import { PartsError } from "../problem.js";

/**
 * One row of a policy: for a type of part, the share of its rated watts or volts that may be used, and where its watts
 * begin to fall with heat and come to nothing (degrees Celsius; null where the policy leaves that to the data sheet).
 */
export type DeratingRow = {
  readonly policy: string;
  readonly part: string;
  readonly of: "watts" | "volts";
  readonly share: number;
  readonly kneeCelsius: number | null;
  readonly zeroCelsius: number | null;
  readonly source: string;
};

type Shares = Readonly<Record<string, number>>;

const rows = (policy: string, of: "watts" | "volts", source: string, shares: Shares): readonly DeratingRow[] =>
  Object.entries(shares).map(([part, share]) => ({
    ...{ policy, part, of, share, kneeCelsius: null, zeroCelsius: null, source },
  }));

const SD18 = "NAVSEA SD-18 as transcribed in an open reliability toolkit (secondary)";
const FROM_MEMORY = "from memory, low confidence";

/**
 * Named policies and what they let a part carry.
 *
 * They are starting points to edit. A figure that follows one says nothing about complying with the paper it is named after.
 */
export const DERATING_POLICIES: readonly DeratingRow[] = [
  ...rows("half load", "watts", "NEETS module 1 (rated watts twice the dissipation)", { resistor: 0.5 }),
  ...rows("NAVSO P-3641A", "watts", "NAVSO P-3641A as quoted (secondary)", { resistor: 0.75 }),
  ...rows("NAVSO P-3641A", "volts", "NAVSO P-3641A as quoted (secondary); 0.5 is called better", { capacitor: 0.75 }),
  ...rows("NAVSEA SD-18", "volts", SD18, {
    paper: 0.55,
    film: 0.55,
    "metallised film": 0.55,
    mica: 0.7,
    "button mica": 0.55,
    glass: 0.6,
    ceramic: 0.6,
    "temperature-compensating ceramic": 0.6,
    "tantalum, solid": 0.6,
    "tantalum, wet": 0.6,
    electrolytic: 0.7,
    "dry electrolytic": 0.7,
    trimmer: 0.6,
    "film resistor": 0.7,
    "power film resistor": 0.55,
    "precision wirewound": 0.7,
    "wirewound resistor": 0.7,
    "chassis wirewound": 0.7,
  }),
  ...rows("NAVSEA SD-18", "watts", SD18, {
    "film resistor under 1/2 W": 0.65,
    "film resistor": 0.55,
    "power film resistor": 0.55,
    "precision wirewound under 1/2 W": 0.7,
    "precision wirewound": 0.5,
    "wirewound resistor": 0.6,
    "chassis wirewound": 0.5,
    "composition control": 0.5,
    "film control": 0.5,
    "wirewound control": 0.55,
  }),
  ...rows("EEE-INST-002", "volts", FROM_MEMORY, {
    ceramic: 0.6,
    film: 0.6,
    mica: 0.6,
    glass: 0.5,
    "tantalum, solid": 0.5,
    "film resistor": 0.8,
    "composition resistor": 0.8,
    "wirewound resistor": 0.8,
  }),
  ...rows("EEE-INST-002", "watts", FROM_MEMORY, {
    "film resistor": 0.6,
    "composition resistor": 0.6,
    "wirewound resistor": 0.6,
  }),
  ...rows("ECSS-Q-ST-30-11C", "volts", FROM_MEMORY, { ceramic: 0.6, film: 0.6, "film resistor": 0.8 }),
  ...rows("ECSS-Q-ST-30-11C", "watts", FROM_MEMORY, { "film resistor": 0.5 }),
];

/**
 * The row of a policy for a type of part.
 *
 * @param of Whether the share of watts or of volts is asked for.
 * @param table The policies in force; the published ones unless the user's own are given.
 * @throws PartsError "unknown-name" when the policy is not there or says nothing on that part.
 * @example deratingShare({ policy: "NAVSEA SD-18", part: "film", of: "volts" }).share // 0.55
 */
export function deratingShare(
  asked: { readonly policy: string; readonly part: string; readonly of: "watts" | "volts" },
  table: readonly DeratingRow[] = DERATING_POLICIES,
): DeratingRow {
  const same = (a: string, b: string) => a.trim().toLowerCase() === b.trim().toLowerCase();
  const ofPolicy = table.filter((row) => same(row.policy, asked.policy));
  if (ofPolicy.length === 0) {
    const names = [...new Set(table.map((row) => row.policy))].join(", ");
    throw new PartsError("unknown-name", asked.policy, `The policies are ${names}.`);
  }
  const found = ofPolicy.find((row) => row.of === asked.of && same(row.part, asked.part));
  if (!found) {
    const parts = ofPolicy.filter((row) => row.of === asked.of).map((row) => row.part);
    const known = parts.length > 0 ? `It speaks of ${parts.join(", ")}.` : `It says nothing on ${asked.of}.`;
    throw new PartsError("unknown-name", asked.part, known);
  }
  return found;
}
