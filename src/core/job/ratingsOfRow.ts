import type { PartsRow } from "../present/sheets/parts.js";
import { readValue } from "../quantity/readValue.js";
import { readTolerance } from "../quantity/tolerance.js";
import type { Piece, Ratings } from "../ratings.js";
import type { RulesInForce } from "../rule.js";
import { TECHNOLOGIES } from "../rules/technologies.js";
import { stagesOf, workOut } from "./workOut.js";

/** How near a piece of a made-up value has to be bought: it is what makes the sum right. */
const NEAR = 0.001;

/**
 * What an offer has to meet to be bought for a row of Parts: one set of limits for each piece of what is to be fitted.
 *
 * New values, tolerances, watts, volts and types that the user typed over are limits of theirs.
 *
 * @throws PartsError "unreadable" where a typed figure is none.
 */
export function ratingsOfRow(row: PartsRow, inForce: RulesInForce): readonly Ratings[] {
  const { ratings } = stagesOf(row, inForce);
  const pieces = ratings.aim?.pieces ?? [];
  const ruled = workOut({ ...row, newValue: null }, inForce);
  const isTypedValue = row.newValue !== null && row.newValue !== ruled.newValue;
  if (pieces.length > 1 && !isTypedValue) return pieces.map((piece) => ofPiece(ratings, piece));
  return [typedOver(isTypedValue ? withValue(ratings, row.newValue!) : ratings, row, ruled)];
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
    aim: { pieces: [piece], text: `${value ?? ""} ${piece.technology}` },
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
