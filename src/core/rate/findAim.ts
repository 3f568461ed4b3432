import { figures } from "../quantity/figures.js";
import { inSpan } from "../quantity/inSpan.js";
import { writeValue } from "../quantity/writeValue.js";
import type { Aim, Rejected } from "../ratings.js";
import { reachesSeries } from "../rules/stockValues.js";
import { technologyOf } from "../rules/technologies.js";
import type { Technology } from "../rules/technology.js";
import { bodyFor } from "./bodyFor.js";
import { shortestString } from "./equalString.js";
import { madeUpPair } from "./madeUpPair.js";
import type { Need } from "./need.js";
import { seriesPair } from "./seriesPair.js";
import { singlePart } from "./singlePart.js";
import { alsoServing, turnedDown } from "./turnedDown.js";

/** What to aim at (null: nothing that is usually made serves), what was weighed and turned down, and why. */
export type AimFound = {
  readonly aim: Aim | null;
  readonly technology: string | null;
  readonly rejected: readonly Rejected[];
  readonly because: readonly string[];
};

/** Where the technologies of a row end below the value wanted, films go on: common practice. */
const ABOVE_A_MEGOHM = ["metal_film", "carbon_film"];

const suits = (role: string) => (id: string) => !technologyOf(id)?.avoidFor.includes(role);

/** From this value up a network's capacitor becomes film, below it mica or ceramic. Common practice. */
const FILM_FROM_FARADS = 1e-9;

/** The rule's technologies in order; a network's row names those of small capacitors before film. */
function ruledTechnologies({ rule, part }: Need): readonly string[] {
  const isLarge = rule.classRow.kind === "network" && (part.value?.value ?? 0) >= FILM_FROM_FARADS;
  return isLarge && part.kind === "capacitor" ? [...rule.technologies].reverse() : rule.technologies;
}

/** Technologies to try: the rule's, those made in its series first, then for resistors of no special class the films that go on above a megohm. */
function technologiesOf(need: Need): readonly Technology[] {
  const { rule, part } = need;
  const goOn =
    part.kind === "resistor" && rule.powerMode === "step" ? ABOVE_A_MEGOHM.filter(suits(rule.roleRow.id)) : [];
  const all = [...new Set([...ruledTechnologies(need), ...goOn])]
    .map(technologyOf)
    .filter((technology) => technology !== undefined)
    .filter(({ kind }) => kind === null || kind === part.kind);
  const coarse = all.filter((technology) => !reachesSeries(rule.series, technology));
  return [...all.filter((technology) => !coarse.includes(technology)), ...coarse];
}

/**
 * The part to aim at: the first technology that is made at the value, watts and volts wanted; else several parts that make it up.
 *
 * Value and rating are searched together. Where volts rule out every single part, resistors become a string of equal
 * ones and electrolytics a pair in series with balancing resistors; where no value serves, two values make one up.
 */
export function findAim(need: Need): AimFound {
  const technologies = technologiesOf(need);
  const rejected: Rejected[] = [];
  let blockedByVolts = need.volts.beyond;
  for (const technology of technologies) {
    const single = singlePart(need, technology);
    rejected.push(...single.rejected);
    if (single.piece) {
      const others = alsoServing(need, technology, single.piece.value);
      const text = single.piece.value === null ? technology.label : writeValue(single.piece.value, need.part.kind);
      return {
        aim: { pieces: [single.piece], text },
        technology: technology.id,
        rejected: [...turnedDown(need, technology), ...rejected],
        because: others.length > 0 ? [`${others.join(" or ")} would serve too`] : [],
      };
    }
    blockedByVolts ||= single.blocked === "body";
  }
  const several = blockedByVolts ? forVolts(need, technologies) : forValue(need, technologies);
  const first = technologies[0];
  const near = first && !blockedByVolts ? turnedDown(need, first) : [];
  const because = several.aim || several.because.length > 0 ? several.because : [nothingServes(need, technologies)];
  return { ...several, because, rejected: [...several.rejected, ...near, ...rejected] };
}

/** Why there is no aim, by what the rule's technologies are usually made for. */
function nothingServes({ part, value }: Need, technologies: readonly Technology[]): string {
  const wanted = value.wanted === null ? "" : ` at ${writeValue(value.wanted, part.kind)}`;
  const ranges = technologies.flatMap(({ label, made }) =>
    made === null ? [] : `${label} ${writeValue(made.min, part.kind)} to ${writeValue(made.max, part.kind)}`,
  );
  return [`nothing that is usually made serves${wanted}`, ...ranges].join("; ");
}

const NOTHING: AimFound = { aim: null, technology: null, rejected: [], because: [] };

/** What no one body that is made at the value bears: the volts, else the watts that go with them. */
function tooMuch({ value, volts, watts }: Need, technologies: readonly Technology[]): string {
  const isMade = ({ made }: Technology) => made !== null && value.wanted !== null && inSpan(value.wanted, made);
  const bears = (technology: Technology) =>
    bodyFor(technology, { watts: null, mostWatts: null, leastVolts: volts.least, wantVolts: null }).body !== null;
  const much = technologies.some((each) => isMade(each) && bears(each)) ? `${watts.want} W at ` : "";
  return `no one body bears ${much}${figures(Number((volts.stress ?? 0).toPrecision(4)))} V`;
}

function forVolts(need: Need, technologies: readonly Technology[]): AimFound {
  if (need.part.kind === "resistor") {
    if (need.volts.stress === null)
      return { ...NOTHING, because: ["the volts across it are not known, and they decide here"] };
    const { aim, rejected } = shortestString(need, technologies);
    if (!aim) return { ...NOTHING, rejected };
    const because = [`${tooMuch(need, technologies)}: ${aim.pieces.length} equal ones in series share volts and watts`];
    return { ...NOTHING, aim, rejected, technology: aim.pieces[0]!.technology, because };
  }
  if (need.rule.ladder !== "elec_V") return NOTHING;
  for (const technology of technologies) {
    const pair = seriesPair(need, technology);
    if (!pair) continue;
    const because = [
      `two in series, each up to ${Math.ceil(pair.shareVolts)} V, with ${pair.balancing} across each to share the volts evenly`,
    ];
    return { ...NOTHING, aim: pair.aim, technology: technology.id, because };
  }
  return NOTHING;
}

/** Kinds of which two make one up; a control or a coil has no twin. */
const MADE_UP: readonly string[] = ["resistor", "capacitor"];

function forValue(need: Need, technologies: readonly Technology[]): AimFound {
  if (!MADE_UP.includes(need.part.kind)) return NOTHING;
  for (const technology of technologies) {
    const pair = madeUpPair(need, technology);
    if (!pair) continue;
    const also = pair.others.length > 0 ? [`also ${pair.others.join(", ")}`] : [];
    const because = [`no stock value serves: two make up ${writeValue(pair.value, need.part.kind)}`, ...also];
    return { ...NOTHING, aim: pair.aim, technology: technology.id, because };
  }
  return NOTHING;
}
