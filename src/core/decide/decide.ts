import { type Place, UNKNOWN_PLACE } from "../circuit/place.js";
import { isValueUnknown } from "../listedAs.js";
import { driftText } from "../measure/drift.js";
import type { Verdict } from "../measure/verdict.js";
import type { Part } from "../part.js";
import type { Action, Settings } from "../rule.js";
import { BLOCKING_PROOF, CLASS_TESTS, PROOFS, type Proof } from "../rules/classTests.js";
import type { RuleFor } from "../rules/ruleFor.js";
import { POLICY_WORDS } from "../rules/ruleWords.js";
import { askForValue, type ByList, settledByList } from "./byList.js";
import { cautionsOf, type SetFacts } from "./cautionsOf.js";
import type { Decision } from "./decision.js";
import { judge, readingText } from "./judge.js";
import type { Finding, Judged, Reading } from "./reading.js";
import type { GivenLimits } from "./readingLimits.js";

/** What was read and seen, and what is known of the place. */
export type Evidence = {
  readonly readings?: readonly Reading[];
  readonly findings?: readonly Finding[];
  readonly place?: Place;
  readonly limits?: GivenLimits;
  readonly set?: SetFacts;
};

type Settled = { readonly action: Action; readonly leads: string; readonly because: readonly string[] };

const GOOD: readonly Verdict[] = ["good", "likely good"];
/** Drift that moisture alone can bring: 2 to 7.5 % is typical, 15 % the most that was seen to recover. */
const DAMP = { min: 0.05, max: 0.151 };
/** From worst to best: the first that any reading says is what they say together. */
const WORST_FIRST: readonly Verdict[] = ["bad", "likely bad", "likely good", "good", "says nothing in place"];

/**
 * What is to be done with an old part: keep, test, replace, lift a lead, check or ask, with the reason and the cautions.
 *
 * Role over class over policy (all in `rule`); a reading convicts or acquits only in the direction physics allows, and
 * no reading saves a part that the policy in force replaces on sight.
 *
 * @example decide(part, ruleFor(inForce, "carbon_comp", "screen_drop"), settings, { readings: [{ quantity: "resistance", value: 301e3, inPlace: true, accuracy: 0.015 }] }).action // "replace"
 */
export function decide(part: Part, rule: RuleFor, settings: Settings, evidence: Evidence = {}): Decision {
  const from = { part, rule, settings, place: evidence.place ?? UNKNOWN_PLACE, given: evidence.limits ?? {} };
  const judged = tellingFirst(rule, evidence.readings ?? []).map((reading) => judge(reading, from));
  const findings = evidence.findings ?? [];
  const listed = settledByList(part);
  const settled = listed ? listedOnly(listed) : settle(part, rule, judged, findings);
  return {
    action: settled.action,
    policy: rule.policy,
    rule: rule.decidedBy.action ?? "",
    verdict: togetherOf(judged, findings),
    drift: judged.find((one) => one.drift !== null)?.drift ?? null,
    judged,
    leads: settled.leads,
    because: settled.because,
    toRead: settled.action === "test" || settled.action === "lift" ? toRead(rule, judged) : [],
    cautions: cautionsOf(rule, settled.action, evidence.set),
  };
}

const listedOnly = (listed: ByList): Settled => ({ ...listed, because: [listed.leads] });

/** What the readings say together; what was found speaks where nothing was read. */
function togetherOf(judged: readonly Judged[], findings: readonly Finding[]): Verdict | null {
  const read = WORST_FIRST.find((each) => judged.some((one) => one.verdict === each));
  if (read || findings.length === 0) return read ?? null;
  return findings.some(({ bad }) => bad) ? "bad" : "good";
}

function settle(part: Part, rule: RuleFor, judged: readonly Judged[], findings: readonly Finding[]): Settled {
  const spoilt = findings.filter(({ bad }) => bad).map(({ text }) => text);
  const convicting = judged.filter(({ verdict }) => verdict === "bad").map(saying);
  const ruled = (action: Action, because: readonly string[]): Settled => ({ action, leads: rule.because, because });
  if (rule.action === "ask") return ruled("ask", [rule.because]);
  const bad = [...convicting, ...spoilt];
  if (rule.action === "check")
    return { ...ruled("check", [...bad, rule.because]), ...(bad[0] ? { leads: bad[0] } : {}) };
  if (bad[0])
    return { action: "replace", leads: bad[0], because: [...bad, ...moisture(rule, judged), ...reasons(rule)] };
  const said = judged.map(saying);
  if (rule.action === "replace")
    return {
      action: "replace",
      leads: sightReason(rule, judged),
      because: [...said, onSight(rule, judged), ...reasons(rule)],
    };
  if (rule.action === "keep") return { ...ruled("keep", [...said, ...reasons(rule)]), leads: said[0] ?? rule.because };
  const settled = tested(rule, judged, findings);
  return settled.action !== "keep" && isValueUnknown(part, rule) ? listedOnly(askForValue(part)) : settled;
}

/** Why a part goes on sight: its use where that demands it, that a passing one is not spared, else what its type does. */
function sightReason(rule: RuleFor, judged: readonly Judged[]): string {
  const passes = judged.find(({ verdict }) => GOOD.includes(verdict));
  if (rule.decidedBy.action?.startsWith("use ")) return rule.roleRow.because;
  return passes
    ? `${saying({ ...passes, because: "" })}, but "${POLICY_WORDS[rule.policy]}" spares none of its type`
    : rule.because;
}

/**
 * A composition part a little high may only be damp: baking brings many back.
 *
 * @see MIL-R-39008C 6.9: parts out of tolerance through moisture are baked at 100 °C before they are called failed
 */
function moisture(rule: RuleFor, judged: readonly Judged[]): readonly string[] {
  const damp = judged.some(({ drift }) => drift !== null && drift >= DAMP.min && drift <= DAMP.max);
  return rule.classRow.id === "carbon_comp" && damp ? ["it may only be damp: warm it dry and read it again"] : [];
}

/** What a part under test comes to: kept when proved good, read again when near a limit, lifted when nothing was proved in place. */
function tested(rule: RuleFor, judged: readonly Judged[], findings: readonly Finding[]): Settled {
  const said = judged.map(saying);
  const settled = (action: Action, more: readonly string[]): Settled => {
    const because = [...said, ...more, ...reasons(rule)];
    return { action, leads: because[0] ?? rule.because, because };
  };
  if (judged.some(({ verdict }) => verdict === "likely bad"))
    return settled("test", ["so near the limit that the meter decides: warm it dry, then read again"]);
  if (judged.length > 0 && isProved(rule, judged)) return settled("keep", [keepNote(judged)]);
  const sound = findings.filter(({ bad }) => !bad).map(({ text }) => text);
  if (judged.length === 0 && sound.length > 0) return settled("keep", sound);
  if (judged.some(({ reading, verdict }) => reading.inPlace && verdict === "says nothing in place"))
    return settled("lift", ["lift a lead and read it again"]);
  return settled("test", judged.length > 0 ? ["what decides is not read yet"] : []);
}

function keepNote(judged: readonly Judged[]): string {
  const leaks = judged.some(({ reading }) => reading.quantity === "insulation" || reading.quantity === "leakage");
  const near = judged.some(({ verdict }) => verdict === "likely good");
  if (leaks) return "keep, and read it again after the burn-in";
  return near ? "keep; it is near its limit, read it again some day" : "keep";
}

/** A part that its own class would keep and its use has tested is settled by leakage alone. */
function proofOf(rule: RuleFor): Proof {
  if (rule.keepBecomesTest && rule.classRow.action[rule.policy] === "keep") return BLOCKING_PROOF;
  return PROOFS[rule.classRow.id] ?? [["resistance", "capacitance", "inductance"]];
}

/** Readings that settle the class before others: of a paper capacitor its insulation before its capacitance. */
function tellingFirst(rule: RuleFor, readings: readonly Reading[]): readonly Reading[] {
  const telling = proofOf(rule).flat();
  return [...readings].sort((a, b) => Number(telling.includes(b.quantity)) - Number(telling.includes(a.quantity)));
}

function isProved(rule: RuleFor, judged: readonly Judged[]): boolean {
  const good = judged.filter(({ verdict }) => GOOD.includes(verdict)).map(({ reading }) => reading.quantity as string);
  return proofOf(rule).every((group) => group.some((quantity) => good.includes(quantity)));
}

/** A reading in words: "reads 612 k, +30 %" or, in place, why it says nothing. */
function saying({ reading, verdict, drift, because }: Judged): string {
  const off = drift === null ? "" : `, ${driftText(drift)}`;
  const where = reading.inPlace ? " in place" : "";
  const what = verdict === "says nothing in place" ? "says nothing" : verdict;
  return [`reads ${readingText(reading)}${where}${off}: ${what}`, because].filter(Boolean).join("; ");
}

function onSight({ policy, decidedBy }: RuleFor, judged: readonly Judged[]): string {
  const passes = judged.some(({ verdict }) => GOOD.includes(verdict));
  const ruled = decidedBy.action?.startsWith("use ") ? "as its use demands" : `as "${POLICY_WORDS[policy]}" has it`;
  return passes ? `replaced ${ruled} although it passes` : `replaced ${ruled}`;
}

function reasons({ classRow, roleRow }: RuleFor): readonly string[] {
  return roleRow.id === "general" ? [classRow.because] : [classRow.because, roleRow.because];
}

/** The tests that would settle it, in words, without those that were read. */
function toRead(rule: RuleFor, judged: readonly Judged[]): readonly string[] {
  const done = judged
    .filter(({ verdict }) => verdict !== "says nothing in place")
    .map(({ reading }) => reading.quantity as string);
  return (CLASS_TESTS[rule.classRow.id] ?? [])
    .filter(({ quantity }) => !done.includes(quantity))
    .map(({ quantity, condition, limit }) => [quantity, condition, limit].filter(Boolean).join(", "));
}
