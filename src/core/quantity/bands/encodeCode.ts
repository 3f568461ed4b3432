import type { Tolerance } from "../../part.js";
import { PartsError } from "../../problem.js";
import { COLOURS, type Colour } from "./colours.js";
import {
  CERAMIC_FARADS,
  CERAMIC_POWERS,
  CERAMIC_PPM,
  CERAMIC_TOLERANCES,
  type ColourTable,
  FAILURES,
  JAN_MICA_TOLERANCES,
  MICA_CHARACTERISTICS,
  MULTIPLIER_POWERS,
  PAPER_TOLERANCES,
  RMA_MICA_TOLERANCES,
} from "./colourTables.js";
import type { BandCode } from "./decodeBands.js";
import { colourFor, encodeBands, figuresAndPower, isSameTolerance } from "./encodeBands.js";

/** A part whose colours are asked for, in base units; what a code writes and is not known here, it refuses. */
export type CodedPart = {
  readonly value: number;
  readonly tolerance: Tolerance;
  readonly ppmPerKelvin?: number | null;
  readonly volts?: number | null;
  /** Failures a part in 1000 hours, as a ratio. */
  readonly failures?: number | null;
  /** The letter of a mica's temperature and drift class. */
  readonly characteristic?: string | null;
};

type OtherCode = Exclude<BandCode, "resistor">;

/**
 * The colours of a part in a code that is no plain row of resistor bands, in the order in which `decodeBands` reads them.
 *
 * A mica part with the type first is written as a commercial one, white; black would say that it is of military make.
 *
 * @throws PartsError "nothing-fits" where the code has no colour for what is asked, or lacks what it has to write
 * @see the readers of these codes
 * @example encodeCode({ value: 0.022e-6, tolerance: { minus: 0.2, plus: 0.2 }, volts: 400 }, "moulded paper") // ["red", "red", "orange", "black", "yellow"]
 */
export function encodeCode(part: CodedPart, code: OtherCode): readonly Colour[] {
  return WRITERS[code](part);
}

const WRITERS: Readonly<Record<OtherCode, (part: CodedPart) => readonly Colour[]>> = {
  reliability: (part) => [...fourBands(part), colourFor(isClose(part.failures), FAILURES, "failure rate")],
  "body-end-dot": bodyEndDot,
  "mica, type first": typeFirstMica,
  "mica, three figures": threeFigureMica,
  "mica, three dots": threeDotMica,
  "moulded paper": (part) => [
    ...picofarads(part, 2),
    colourFor(isSameTolerance(part.tolerance), PAPER_TOLERANCES, "tolerance"),
    ...paperVolts(part.volts),
  ],
  ceramic: ceramicBands,
};

const isClose = (wanted: number | null | undefined) => (each: number) =>
  wanted != null && Math.abs(each - wanted) <= Math.abs(wanted) * 1e-9;

const fourBands = ({ value, tolerance }: CodedPart) => encodeBands({ ohms: value, tolerance }, 4);

/** Body, end, dot and the other end, which knows only gold and silver. */
function bodyEndDot(part: CodedPart): readonly Colour[] {
  const colours = fourBands(part);
  if (["gold", "silver", "none"].includes(colours[3]!)) return colours;
  throw new PartsError("nothing-fits", "this tolerance", "A coloured end says 5 or 10 %, a plain one 20 %.");
}

function typeFirstMica(part: CodedPart): readonly Colour[] {
  const [first, second, multiplier] = picofarads(part, 2);
  const wanted = part.characteristic?.trim().toUpperCase();
  const characteristic = colourFor((each) => each === wanted, MICA_CHARACTERISTICS, "characteristic");
  const tolerance = colourFor(isSameTolerance(part.tolerance), JAN_MICA_TOLERANCES, "tolerance");
  return ["white", first!, second!, characteristic, tolerance, multiplier!];
}

function threeFigureMica(part: CodedPart): readonly Colour[] {
  const [first, second, third, multiplier] = picofarads(part, 3);
  const tolerance = colourFor(isSameTolerance(part.tolerance), RMA_MICA_TOLERANCES, "tolerance");
  return [first!, second!, third!, dotOfVolts(part.volts), tolerance, multiplier!];
}

function threeDotMica(part: CodedPart): readonly Colour[] {
  const isPlain = isSameTolerance(part.tolerance)(RMA_MICA_TOLERANCES.none!) && (part.volts ?? 500) === 500;
  if (isPlain) return picofarads(part, 2);
  throw new PartsError("nothing-fits", "this part", "Three dots say 20 % and 500 V; use six dots for another.");
}

function ceramicBands(part: CodedPart): readonly Colour[] {
  const temperature = colourFor((each) => each === part.ppmPerKelvin, CERAMIC_PPM, "temperature coefficient");
  const { value, tolerance } = part;
  const colour =
    value > SMALL_CERAMIC
      ? colourFor(isSameTolerance(tolerance), CERAMIC_TOLERANCES, "tolerance")
      : colourFor(isClose(tolerance.plus * value), CERAMIC_FARADS, "tolerance in picofarads");
  return [temperature, ...picofarads(part, 2, CERAMIC_POWERS), colour];
}

/** Figures and multiplier of a capacitor, counted in picofarads. */
function picofarads(
  { value }: CodedPart,
  count: 2 | 3,
  powers: ColourTable<number> = MULTIPLIER_POWERS,
): readonly Colour[] {
  const counted = Number((value * 1e12).toPrecision(12));
  let { figures, power } = figuresAndPower(counted, count, "pF");
  // Three figures of a two-figure value below 100 pF start with nought, as the old charts have it: 051 x 1, not 510 x 0.1.
  while (count === 3 && power < 0 && figures.at(-1) === 0) [figures, power] = [[0, ...figures.slice(0, -1)], power + 1];
  return [...figures.map((figure) => COLOURS[figure]!), colourFor((each) => each === power, powers, "multiplier")];
}

function dotOfVolts(volts: number | null | undefined): Colour {
  const known: Readonly<Record<number, Colour>> = { 500: "green", 1000: "gold", 2000: "silver" };
  const found =
    volts == null ? "none" : (known[volts] ?? (volts < 1000 && volts % 100 === 0 ? COLOURS[volts / 100] : null));
  if (found) return found;
  throw new PartsError("nothing-fits", `${volts} V`, "The dot says whole hundreds up to 900 V, 1000 V or 2000 V.");
}

/** One band of hundreds, two from 1000 V on; none where the volts are not known. */
function paperVolts(volts: number | null | undefined): readonly Colour[] {
  if (volts == null) return [];
  const hundreds = volts / 100;
  if (Number.isInteger(hundreds) && hundreds > 0 && hundreds < 100)
    return [...String(hundreds)].map((figure) => COLOURS[Number(figure)]!);
  throw new PartsError("nothing-fits", `${volts} V`, "The bands say whole hundreds of volts up to 9900 V.");
}

/** Up to here the tolerance band of a ceramic counts picofarads. */
const SMALL_CERAMIC = 10e-12;
