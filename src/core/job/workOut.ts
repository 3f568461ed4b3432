import { UNKNOWN_PLACE } from "../circuit/place.js";
import { decide } from "../decide/decide.js";
import type { Decision } from "../decide/decision.js";
import { isOurs } from "../present/ownAnswer.js";
import { partOfRow } from "../present/partRow.js";
import type { PartsRow } from "../present/sheets/parts.js";
import { writeTolerance } from "../quantity/tolerance.js";
import { valueOfAim } from "../rate/rangeOf.js";
import { ratingsFor } from "../rate/ratingsFor.js";
import type { Ratings } from "../ratings.js";
import type { RulesInForce } from "../rule.js";
import { CAUTIONS } from "../rules/cautions.js";
import { ruleFor } from "../rules/ruleFor.js";
import { technologyOf } from "../rules/technologies.js";
import { reasonLine } from "./oneLine.js";
import { withOtherList } from "./otherList.js";
import { evidenceOf, foundBy, roomOfRow } from "./rowEvidence.js";
import type { Stages } from "./stages.js";

/** The worked-out cells of a row of Parts. */
export type WorkedOut = Pick<
  PartsRow,
  | "verdict"
  | "action"
  | "because"
  | "newValue"
  | "newSize"
  | "newTolerance"
  | "newWatts"
  | "newVolts"
  | "newType"
  | "look"
>;

/** A verdict or an action that the user typed; null for one that we wrote as a value, for it may rest on an older reading. */
const typedOver = (row: PartsRow, key: "verdict" | "action"): string | null =>
  row[key] === null || isOurs(row, key) ? null : row[key];

/**
 * The stages in turn for one row of Parts. A verdict or an action in the row that is not what the stages say is the user's,
 * and outranks them.
 *
 * @throws PartsError "unreadable" where a figure of the row is none, "unknown-name" for a type or use that no rule has.
 */
export function stagesOf(row: PartsRow, inForce: RulesInForce): Stages {
  const { part, because } = withOtherList(partOfRow(row, inForce.rules), row.otherList);
  const rule = ruleFor(inForce, part.className.value, part.role?.value ?? null);
  const { place = UNKNOWN_PLACE, readings = [], findings = [] } = evidenceOf(row, inForce);
  const read = decide(part, rule, inForce.settings, { place, readings, findings });
  const said = typedOver(row, "verdict");
  const typed = said === null || said === read.verdict ? null : foundBy(said);
  const found = typed
    ? decide(part, rule, inForce.settings, { place, readings: typed.bad ? readings : [], findings: [typed] })
    : read;
  const action = (typedOver(row, "action") ?? found.action) as Decision["action"];
  const decision = { ...found, action, because: [...found.because, ...because] };
  const ratings = ratingsFor(part, rule, inForce.settings, { place, room: roomOfRow(row) });
  return { part, rule, decision, ratings, also: because };
}

/**
 * What every worked-out column of a row says; the same code as behind the cell function and the commands.
 *
 * @example workOut(row, DEFAULTS_IN_FORCE).action // "replace"
 */
export function workOut(row: PartsRow, inForce: RulesInForce): WorkedOut {
  const stages = stagesOf(row, inForce);
  const { decision, ratings } = stages;
  const said = {
    verdict: decision.verdict,
    action: decision.action,
    because: reasonLine(stages),
    look: lookOf(decision.cautions),
  };
  return { ...said, ...newCells(decision.action === "keep" ? null : ratings) };
}

/** Cautions as one cell: their own words, stops first. */
const lookOf = (ids: readonly string[]): string | null =>
  ids.flatMap((id) => CAUTIONS.find((caution) => caution.id === id)?.text ?? []).join(" / ") || null;

function newCells(ratings: Ratings | null) {
  const aim = ratings?.aim ?? null;
  const [piece] = aim?.pieces ?? [];
  if (!ratings || !aim || !piece) {
    const nothing = {
      newValue: null,
      newSize: null,
      newTolerance: null,
      newWatts: null,
      newVolts: null,
      newType: null,
    };
    return nothing;
  }
  return {
    newValue: aim.text,
    newSize: aim.pieces.length === 1 ? piece.value : (valueOfAim(aim, ratings.kind) ?? ratings.wanted),
    newTolerance: piece.tolerance && writeTolerance(piece.tolerance),
    newWatts: piece.watts,
    newVolts: piece.volts,
    newType: technologyOf(piece.technology)?.label ?? piece.technology,
  };
}
