import {
  attempt,
  decide,
  oneLine,
  type Piece,
  POLICIES,
  type Policy,
  type Ratings,
  type Rejected,
  type RulesInForce,
  ratingsFor,
  ruleFor,
  type Stages,
  valueOfAim,
} from "../../core/index.js";
import type { Answer } from "./answer.js";
import type { Case } from "./case.js";
import { type Laid, layOut } from "./layOut.js";
import { orderOf } from "./orderCase.js";
import { rangesOf, readingOut, VERDICTS } from "./spansOut.js";

type Decided = Stages & { readonly laid: Laid };

/** From most to least to be done: what the whole comes to when its sections differ. */
const MOST_FIRST = ["replace", "ask", "lift", "test", "check", "keep"] as const;

function decideOne(laid: Laid, inForce: RulesInForce): Decided {
  const rule = { ...ruleFor(inForce, laid.part.className.value, laid.part.role?.value ?? null), ...laid.ruled };
  const { place, stock, readings, findings, limits } = laid;
  const decision = decide(laid.part, rule, inForce.settings, { place, readings, findings, limits, set: laid.set });
  const ratings = ratingsFor(laid.part, rule, inForce.settings, { place, stock, room: laid.room });
  return { laid, part: laid.part, rule, decision, ratings };
}

/** The action under each policy: one part, three lawful answers. */
function byPolicy(laid: Laid, inForce: RulesInForce): Record<Policy, string> {
  const under = (policy: Policy) =>
    decideOne(laid, { ...inForce, settings: { ...inForce.settings, policy } }).decision.action;
  return Object.fromEntries(POLICIES.map((policy) => [policy, under(policy)])) as Record<Policy, string>;
}

const pieceOut = (piece: Piece, name: string | null, pins: string | null) => ({
  ...(name === null ? {} : { of: name }),
  ...(pins === null ? {} : { pins }),
  ...(piece.kind ? { kind: piece.kind } : {}),
  value: piece.value,
  watts: piece.watts,
  volts: piece.volts,
  tolerance: piece.tolerance,
  technology: piece.technology,
});

const unique = <T>(list: readonly T[]): readonly T[] => [...new Set(list)];

const uniqueBy = (list: readonly Rejected[]) =>
  list.filter((one, index) => list.findIndex(({ what, why }) => what === one.what && why === one.why) === index);

/**
 * The whole decision of a case: what to do, what to fit, what was turned down, and why.
 *
 * A case that names a type or use that no row has, or a figure that nothing meets, asks, and says what would have worked.
 *
 * @param defaults Rules and settings; figures of the case may change settings.
 */
export function decideCase(one: Case, defaults: RulesInForce): Answer {
  return attempt<Answer, Answer>(
    () => decidedCase(one, defaults),
    ({ message, problem }) => ({ id: one.id, action: "ask", verdict: null, value: null, because: [message], problem }),
  );
}

function decidedCase(one: Case, defaults: RulesInForce): Answer {
  const { pieces, settings, whole } = layOut(one, defaults);
  const inForce = { ...defaults, settings: { ...defaults.settings, ...settings } };
  const decided = pieces.map((laid) => decideOne(laid, inForce));
  const first = decided[0]!;
  const top = whole ? decideOne(whole, inForce) : first;
  const action = MOST_FIRST.find((each) => [top, ...decided].some(({ decision }) => decision.action === each))!;
  return {
    id: one.id,
    action,
    line: oneLine({ ...top, decision: { ...top.decision, action } }, whole ? decided : []),
    verdict: top.decision.verdict === null ? null : VERDICTS[top.decision.verdict],
    drift: top.decision.drift,
    readings: top.decision.judged.map(readingOut),
    ...fitted(decided),
    ...(decided.length === 1 ? rangesOf(first.ratings) : {}),
    ...orderOf(one),
    technology: unique(
      decided.flatMap(({ ratings }) => [
        ...(ratings.aim?.pieces ?? []).map((piece) => piece.technology),
        ...ratings.technologies,
      ]),
    ),
    rejected: uniqueBy(decided.flatMap(({ ratings }) => ratings.rejected)),
    choices: unique(decided.flatMap(({ ratings }) => ratings.choices ?? [])),
    cautions: unique([top, ...decided].flatMap(({ decision }) => decision.cautions)),
    because: unique([
      top.decision.leads,
      ...top.decision.because,
      ...decided.flatMap(({ decision, ratings }) => [...decision.because, ...ratings.because]),
      ...decided.flatMap(({ ratings }) => ratings.decides ?? []),
    ]),
    toRead: unique([top, ...decided].flatMap(({ decision }) => decision.toRead)),
    policy: top.decision.policy,
    byPolicy: byPolicy(whole ?? first.laid, inForce),
    rule: top.decision.rule,
    ...(first.ratings.fit && !whole ? { fit: first.ratings.fit } : {}),
    figures: decided.length === 1 ? first.ratings.figures : decided.map(({ ratings }) => ratings.figures),
  };
}

/** What to fit: one value, or `values` where the part is split or made up; "ask" where the user has to choose. */
function fitted(decided: readonly Decided[]): Answer {
  const single = decided.length === 1 ? decided[0]! : null;
  const ratings = single?.ratings;
  const pieces = decided.flatMap(({ laid, ratings: each }) =>
    (each.aim?.pieces ?? []).map((piece) => pieceOut(piece, single ? null : laid.name, laid.part.pins)),
  );
  const plain = pieces.length === 1 ? pieces[0]! : null;
  if (ratings && plain) {
    return {
      value: plain.value,
      text: ratings.aim?.text,
      tolerances: { old: oldTolerance(single!), new: plain.tolerance },
      watts: plain.watts,
      volts: plain.volts,
      voltsKind: ratings.voltsKind,
      least: { watts: ratings.leastWatts, volts: ratings.leastVolts },
    };
  }
  const asks = decided.some(({ ratings: each }) => (each.choices?.length ?? 0) > 0);
  const main = pieces.find((piece) => piece.value !== null);
  return {
    ...(ratings ? totalOf(ratings) : {}),
    ...(pieces.length > 0 ? { values: pieces } : { value: asks ? "ask" : null }),
    text: decided
      .map(({ ratings: each }) => each.aim?.text ?? "")
      .filter(Boolean)
      .join("; "),
    tolerances: { old: single ? oldTolerance(single) : null, new: main?.tolerance ?? null },
    watts: main?.watts ?? ratings?.wantWatts ?? null,
    volts: pieces.find((piece) => piece.volts !== null)?.volts ?? ratings?.wantVolts ?? null,
    voltsKind: ratings?.voltsKind ?? "dc",
  };
}

/** What a made-up value comes to. */
function totalOf({ aim, kind }: Ratings): Answer {
  return aim && /\+|\|\|/.test(aim.text) ? { total: valueOfAim(aim, kind) } : {};
}

const oldTolerance = ({ laid }: Decided) => laid.part.tolerance?.value ?? null;
