import {
  attempt,
  decodeBands,
  fuseSays,
  type Kind,
  type ListedPart,
  readTolerance,
  type SplitFrom,
  type Tolerance,
} from "../../core/index.js";
import type { Case } from "./case.js";
import type { Figure, Given } from "./given.js";
import { lineOf } from "./lineOf.js";
import type { PieceCase } from "./pieceCases.js";

/** The part as its line says it, with the case's own figures in their place; a section with its pins and its can. */
export function listedOf(one: Case, given: Given, piece: PieceCase, figure: Figure): ListedPart & SplitFrom {
  const isPiece = piece.name !== null;
  const line = lineOf(one.partsListLine ?? "", piece.kind);
  const colours = coloursOf(given, piece.kind);
  const tc = given.rest.tc ?? given.rest.tempco ?? given.rest.temperatureCoefficient;
  return {
    ...line,
    printed: piece.kind === "fuse" ? fuseLine(line.printed, given) : line.printed,
    kind: piece.kind,
    value: piece.nominal ?? (isPiece ? null : (colours?.value ?? figure("nominal") ?? line.value)),
    tolerance: toleranceOf(one, given) ?? colours?.tolerance ?? line.tolerance,
    watts: isPiece && piece.kind === "resistor" ? null : (figure("watts") ?? line.watts),
    volts: piece.ratedVolts ?? figure("ratedVolts") ?? (isPiece ? null : line.volts),
    temperatureCoefficient: typeof tc === "string" ? tc : line.temperatureCoefficient,
    taper: typeof given.rest.taper === "string" ? given.rest.taper : line.taper,
    parent: isPiece ? (line.designators[0] ?? null) : null,
    suffix: piece.name,
    pins: piece.pins,
    whole: null,
  };
}

/** A fuse's line with the amperes and speed that the case gives beside it. */
function fuseLine(printed: string, { figures, rest }: Given): string {
  const amps = figures.get("amps")?.[0];
  return fuseSays(printed).amps === null && amps !== undefined ? `${printed} ${amps} A ${rest.speed ?? ""}` : printed;
}

/** The tolerance that a case gives, in the words of lists ("-10/+50", "GMV") or as one share both ways. */
function toleranceOf({ given: own = {} }: Case, given: Given): Tolerance | null {
  if (given.rest.tolStated === false) return null;
  const text = Object.entries(own).find(([key, value]) => /^tol/i.test(key) && typeof value === "string")?.[1];
  const said = typeof text === "string" ? attempt(() => readTolerance(text)) : null;
  const ratio = given.figures.get("tolerance")?.[0];
  return said ?? (ratio === undefined ? null : { minus: ratio, plus: ratio });
}

/** Body, end and dot, or a row of bands, as `given` names them. */
function coloursOf(given: Given, kind: Kind): { readonly value: number; readonly tolerance: Tolerance | null } | null {
  const { body, end, dot, bands } = given.rest;
  if (kind !== "resistor") return null;
  const row = Array.isArray(bands) ? bands.join(" ") : bands;
  return attempt(() => {
    if (typeof body === "string")
      return decodeBands([body, end, dot].filter(Boolean).join(" "), "body-end-dot").reading;
    return typeof row === "string" ? decodeBands(row).reading : null;
  });
}
