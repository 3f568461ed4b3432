import * as core from "../core/index.js";
import { choice, count, rating, sizeAndKind, text } from "./ask.js";
import { rowsOf, spill } from "./cell.js";

/** How far from the value wanted an offer may be when nothing is said. */
const WITHIN = 0.05;

/**
 * Who sells a part: the best of a table of offers, with its value in ohms or farads as text and the price of one piece. It asks for no safety class: a place at the line wants a part marked X or Y.
 * @customfunction WHO_SELLS
 * @helpurl reference.html#WHO_SELLS
 * @param value What is wanted, such as 470 k or 0.047 uF.
 * @param offers The table of offers with its heads, as in the sheet Offers: vendor, kind, value, watts, technology, prices.
 * @param watts The least watts; any when left out.
 * @param volts The least volts; any when left out.
 * @param technology Such as metal film or polyester; any when left out.
 * @param within How far off the value may be, as a ratio: 5% when left out.
 * @param place 1 for the best (when left out), 2 for the second best, and so on.
 * @param kind resistor, capacitor or another kind, where the value's unit does not tell.
 * @returns One row: vendor, stock number, value, tolerance, watts, volts, price of one piece, remarks.
 * @example LUG.WHO_SELLS("0.05 uF", {"vendor", "stock number", "kind", "value", "volts", "prices"; "Corwen", "4417", "capacitor", "0.047 µF", 630, "0.12"}, , 400, , 10%) -> {"Corwen", "4417", "0.047 µF", "", "", 630, 0.12, ""}
 */
export function whoSells(
  value: unknown[][],
  offers: unknown[][],
  watts?: unknown[][],
  volts?: unknown[][],
  technology?: unknown[][],
  within?: unknown[][],
  place?: unknown[][],
  kind?: unknown[][],
): unknown[][] {
  const [heads = [], ...rows] = rowsOf(offers);
  const table = { name: "Offers", heads: heads.map(String), rows };
  return spill(
    [
      sizeAndKind(value, "value"),
      rating(watts, "watts", "watt", null),
      rating(volts, "volts", "volt", null),
      text(technology, null),
      rating(within, "within", "ratio", WITHIN),
      count(place, "place", 1),
      choice(kind, "kind", core.KINDS, null),
    ],
    ({ value, kind: told }, watts, volts, technology, within, place, kind) => {
      const sought = { kind: kindOf(kind ?? told), value, watts, volts, technology, within };
      const match = core.whoSells(table, sought)[place - 1];
      if (match) return [matchRow(match)];
      const place1 = place === 1 ? "" : ` in place ${place}`;
      throw new core.PartsError("nothing-fits", `${core.writeValue(value, sought.kind)}${place1}`, "Ask for less.");
    },
  );
}

function kindOf(kind: core.Kind | null): core.Kind {
  if (kind) return kind;
  throw new core.PartsError("unknown-name", "the kind of part", "Write the value with its unit, or say resistor.");
}

function matchRow({ offer, notes }: core.Match): core.Cell[] {
  const price = core.piecePrice(offer, 1);
  return [
    offer.vendor,
    offer.stockNumber ?? "",
    offer.value === null ? "" : core.writeValue(offer.value, offer.kind),
    offer.tolerance ? core.writeTolerance(offer.tolerance) : "",
    offer.watts ?? "",
    offer.volts ?? "",
    Number.isFinite(price) ? price : "",
    notes.map((note) => note.text).join("; "),
  ];
}
