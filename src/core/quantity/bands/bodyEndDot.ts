import { PartsError } from "../../problem.js";
import type { BandReading } from "./bandReading.js";
import type { Colour } from "./colours.js";
import { readResistorBands } from "./resistorBands.js";

/**
 * A resistor of the 1930s painted body, end and dot: body first figure, end second, dot multiplier, other end tolerance.
 *
 * An end or a dot that cannot be seen has the body's colour: write it "none". No tolerance colour means 20 %.
 *
 * @param colours Body, end, dot, and the other end where it is gold or silver.
 * @throws PartsError "unreadable" when there are not three or four, or they make no resistor.
 * @see RMA body-end-dot code
 * @example readBodyEndDot(["green", "grey", "red"]).value // 5_800
 */
export function readBodyEndDot(colours: readonly Colour[]): BandReading {
  const [body, end, dot, otherEnd = "none"] = colours;
  if (!body || !end || !dot || colours.length > 4) {
    throw new PartsError(
      "unreadable",
      colours.join(" "),
      "Give body, end and dot, and the other end if it is coloured.",
    );
  }
  const seen = (colour: Colour) => (colour === "none" ? body : colour);
  return readResistorBands([body, seen(end), seen(dot), otherEnd]);
}
