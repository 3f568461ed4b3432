import { PartsError } from "../problem.js";
import { scanNumber } from "./notation/number.js";
import { type Measure, type Unit, unitNamed } from "./notation/units.js";

/** How each measure is written, for the message when it can't be read. */
const LIKE: Readonly<Record<Measure, string>> = {
  ohm: "470, 470 ohms or 4.7 k",
  farad: "0.1 uF or 250 pF",
  henry: "2.5 mH",
  watt: "0.5, 1/2 W or 250 mW",
  volt: "400, 400 V or 1.6 kV",
  ampere: "0.05, 50 mA or 2 A",
  hertz: "60, 60 Hz or 455 kc",
  metre: "0.01, 1 cm or 3/8 in",
  ratio: "0.1 or 10 %",
};

/** Where a length is asked for, mm is no micromicrofarad and m no million. */
const LENGTHS: Readonly<Record<string, Unit>> = {
  m: { measure: "metre", factor: 1 },
  mm: { measure: "metre", factor: 1e-3 },
};

/** A number without its unit is farads only where it is as small as farads are; ".01" on a capacitor means microfarads. */
const isBareMicrofarads = (number: number, measure: Measure) => measure === "farad" && number >= 0.001;

/**
 * A rating that a text says, in base units: watts, volts, amperes, hertz, metres, or a ratio.
 *
 * @throws PartsError "unreadable" when the text is not one such amount
 * @example readMeasure("1/2 W", "watt") // 0.5
 */
export function readMeasure(text: string, measure: Measure): number {
  const trimmed = text.trim();
  const sign = /^[-−]/.test(trimmed) ? -1 : 1;
  const plain = trimmed.replace(/^[-+−]\s*/, "");
  const number = scanNumber(plain, 0);
  const word = number ? plain.slice(number.end).trim() : "";
  const unit = word === "" ? { measure, factor: 1 } : (measure === "metre" && LENGTHS[word]) || unitNamed(word);
  const isVague = number !== null && word === "" && isBareMicrofarads(number.value, measure);
  if (!number || !unit || isVague || (unit.measure !== null && unit.measure !== measure)) {
    throw new PartsError("unreadable", text, `Write it like ${LIKE[measure]}.`);
  }
  return Number((sign * number.value * unit.factor).toPrecision(15));
}
