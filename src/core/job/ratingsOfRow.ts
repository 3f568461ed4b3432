import type { PartsRow } from "../present/sheets/parts.js";
import { readValue } from "../quantity/readValue.js";
import { readTolerance } from "../quantity/tolerance.js";
import { writeValue } from "../quantity/writeValue.js";
import type { Piece, Ratings } from "../ratings.js";
import type { RulesInForce } from "../rule.js";
import { TECHNOLOGIES } from "../rules/technologies.js";
import { isMadeUp, typedNetwork } from "./typedNetwork.js";
import { stagesOf, workOut } from "./workOut.js";

/** How near a piece of a made-up value has to be bought: it is what makes the sum right. */
const NEAR = 0.001;

/**
 * What an offer has to meet to be bought for a row of Parts: one set of limits for each piece of what is to be fitted.
 *
 * New values, tolerances, watts, volts and types that the user typed over are limits of theirs; a value typed as
 * `1.6 M + 1.6 M` asks for each of its pieces.
 *
 * @throws PartsError "unreadable" where a typed figure is none.
 */
export function ratingsOfRow(row: PartsRow, inForce: RulesInForce): readonly Ratings[] {
  const { ratings, ruled, typed } = asked(row, inForce);
  const pieces = typed !== null && isMadeUp(typed) ? typedNetwork(typed, ratings) : (ratings.aim?.pieces ?? []);
  if (pieces.length < 2 || (typed !== null && !isMadeUp(typed))) return [limitsOfRow(row, inForce)];
  return pieces.map((piece) => {
    const own = ofPiece(ratings, piece);
    return own.kind === ratings.kind ? typedOver(own, row, ruled) : own;
  });
}

/**
 * What whatever is fitted for a row of Parts has to meet as a whole, be it one part or several.
 *
 * @throws PartsError "unreadable" where a typed figure is none.
 */
export function limitsOfRow(row: PartsRow, inForce: RulesInForce): Ratings {
  const { ratings, ruled, typed } = asked(row, inForce);
  return typedOver(typed === null || isMadeUp(typed) ? ratings : withValue(ratings, typed), row, ruled);
}

/** The limits by the rules, the new columns by the rules, and the new value where it is the user's. */
function asked(row: PartsRow, inForce: RulesInForce) {
  const ruled = workOut({ ...row, newValue: null }, inForce);
  const typed = row.newValue !== null && row.newValue !== ruled.newValue ? row.newValue : null;
  return { ratings: stagesOf(row, inForce).ratings, ruled, typed };
}

function ofPiece(ratings: Ratings, piece: Piece): Ratings {
  const { value } = piece;
  return {
    ...ratings,
    kind: piece.kind ?? ratings.kind,
    wanted: value,
    window: value === null ? null : { min: value * (1 - NEAR), max: value * (1 + NEAR) },
    gate: "nominal",
    tolerance: piece.tolerance,
    leastWatts: piece.watts,
    wantWatts: piece.watts,
    mostWatts: null,
    leastVolts: piece.volts,
    wantVolts: piece.volts,
    technologies: [piece.technology, ...ratings.technologies.filter((id) => id !== piece.technology)],
    aim: { pieces: [piece], text: value === null ? "" : writeValue(value, piece.kind ?? ratings.kind) },
  };
}

function withValue(ratings: Ratings, text: string): Ratings {
  const { value } = readValue(text, { kind: ratings.kind });
  const window = { min: value * (1 - NEAR), max: value * (1 + NEAR) };
  return { ...ratings, wanted: value, window, gate: "nominal", aim: ratings.aim && { ...ratings.aim, text } };
}

function typedOver(ratings: Ratings, row: PartsRow, ruled: Partial<PartsRow>): Ratings {
  const typed = <K extends keyof PartsRow>(key: K) => (row[key] !== null && row[key] !== ruled[key] ? row[key] : null);
  const [watts, volts, type, tolerance] = [
    typed("newWatts"),
    typed("newVolts"),
    typed("newType"),
    typed("newTolerance"),
  ];
  const technology = TECHNOLOGIES.find(({ id, label }) => label === type || id === type)?.id;
  return {
    ...ratings,
    ...(watts === null ? {} : { leastWatts: watts, wantWatts: watts, mostWatts: null }),
    ...(volts === null ? {} : { leastVolts: volts, wantVolts: volts }),
    ...(technology === undefined ? {} : { technologies: [technology] }),
    ...(tolerance === null ? {} : { tolerance: readTolerance(tolerance) }),
  };
}
