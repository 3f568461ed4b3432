import type { Evidence } from "../decide/decide.js";
import { fact } from "../fact.js";
import type { Part } from "../part.js";
import { partOfRow } from "../present/partRow.js";
import type { PartsRow } from "../present/sheets/parts.js";
import { attempt } from "../problem.js";
import type { RulesInForce } from "../rule.js";
import { newText } from "./oneLine.js";
import { evidenceOf } from "./rowEvidence.js";
import { type Stages, stagesOfPart } from "./stages.js";

/** One answer to a question about a part's use, and what it would change; a null role is "don't know yet". */
export type UseChoice = { readonly role: string | null; readonly label: string; readonly comesTo: string };

/** A question about a part's use, asked only where the answers differ. */
export type UseQuestion = { readonly part: string; readonly text: string; readonly choices: readonly UseChoice[] };

/** Uses that are worth asking about, by kind, as they are met in sets; the first of each outcome stands for its like. */
const ASKED: Readonly<Partial<Record<Part["kind"], readonly string[]>>> = {
  capacitor: [
    "general",
    "coupling_grid",
    "screen_bypass",
    "first_filter",
    "later_filter",
    "cathode_bypass",
    "across_line",
    "line_to_chassis",
    "antenna_isolation",
    "float_ground",
    "tuned",
    "oscillator",
    "output_plate",
    "boost",
    "buffer",
  ],
  resistor: [
    "general",
    "plate_load",
    "screen_drop",
    "grid_stop",
    "pulse",
    "meter",
    "b_plus_drop",
    "heater_drop",
    "focus_hv",
  ],
};

/** Electrolytics stand in supplies and bypasses, never at the line or in tuned circuits; anything else is no filter. */
const WET = ["general", "first_filter", "later_filter", "cathode_bypass", "bias_supply"];
const DRY_ONLY = ["first_filter", "later_filter", "cathode_bypass"];

const plausible = (part: Part, role: string) =>
  part.className.value.startsWith("elec_") ? WET.includes(role) : !DRY_ONLY.includes(role) || part.kind !== "capacitor";

/** What an answer comes to: the action and the new part, in words. */
const outcome = ({ decision, ratings }: Stages) =>
  decision.action === "keep" ? "keep" : [decision.action, newText(ratings)].filter(Boolean).join(": ");

/**
 * The question about a part's use, where its use is open or a guess and would change the answer; null where it would not.
 *
 * Uses with one outcome stand together. "Don't know yet" is always among the answers and changes nothing.
 *
 * @example questionOfUse(part, DEFAULTS_IN_FORCE)?.choices.map(({ comesTo }) => comesTo)
 */
export function questionOfUse(part: Part, inForce: RulesInForce, evidence: Evidence = {}): UseQuestion | null {
  if (part.role !== null && part.role.sure !== "a guess") return null;
  const now = outcome(stagesOfPart(part, inForce, evidence));
  const byOutcome = new Map<string, { role: string; labels: string[] }>();
  for (const role of (ASKED[part.kind] ?? []).filter((each) => plausible(part, each))) {
    const row = inForce.rules.find((rule) => rule.scope === "role" && rule.id === role);
    if (!row) continue;
    const comesTo = outcome(stagesOfPart({ ...part, role: fact(role, "user", "you") }, inForce, evidence));
    const known = byOutcome.get(comesTo);
    if (known) known.labels.push(row.label);
    else byOutcome.set(comesTo, { role, labels: [row.label] });
  }
  if (byOutcome.size < 2) return null;
  const choices = [...byOutcome].map(([comesTo, { role, labels }]) => ({ role, label: labels.join(", or "), comesTo }));
  return {
    part: part.id,
    text: `What does ${part.designator || part.printed} do?`,
    choices: [...choices, { role: null, label: "don't know yet", comesTo: now }],
  };
}

/**
 * The same question for a row of Parts, with what was read of it; null also for a row that cannot be read.
 *
 * @example questionOfRow(row, DEFAULTS_IN_FORCE)?.text // "What does C17 do?"
 */
export function questionOfRow(row: PartsRow, inForce: RulesInForce): UseQuestion | null {
  return attempt(() => questionOfUse(partOfRow(row, inForce.rules), inForce, evidenceOf(row, inForce)));
}
