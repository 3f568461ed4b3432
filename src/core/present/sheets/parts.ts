/** TABLE: the columns of Parts, in the order of thought; whatever a worked-out column rests on stands to its left. */
import { amount, degrees, number, text, word, yes } from "../column.js";
import { type RowOf, sheet } from "../sheet.js";
import {
  AMPS,
  CELSIUS,
  IN_AMPS,
  IN_MILLIMETRES,
  IN_VOLTS,
  IN_WATTS,
  MILLIMETRES,
  PIECES,
  SIZE,
  VOLTS,
  WATTS,
} from "./formats.js";

const where = { group: "where", tint: "printed" } as const;
const was = { group: "was", tint: "printed" } as const;
const aside = { group: "aside", tint: "printed", folded: true } as const;
const found = { group: "found", tint: "yours", folded: true } as const;
const yours = { tint: "yours" } as const;
const worked = { tint: "worked", live: true } as const;

/** Where a reading was taken: with the part in its place, or with one lead lifted. */
export const IN_PLACE = ["in place", "lifted"] as const;

/** Parts: one row a part, from the list's own writing to what was fitted. */
export const PARTS_SHEET = sheet("Parts", 2, {
  id: text("id", { ...where, width: 64 }),
  designator: text("designator", { ...where, width: 104 }),
  printed: text("printed", { width: 170, tint: "printed" }),
  section: text("section", { ...where, folded: true, width: 120 }),
  project: text("set", { ...where, folded: true, width: 56 }),
  document: text("document", { ...where, folded: true, width: 110 }),
  place: text("place", { ...where, ...yours, folded: true, width: 110 }),
  sameAs: text("same part as", { ...where, ...yours, folded: true, width: 116 }),
  otherList: text("other list says", { ...where, ...yours, folded: true, width: 170 }),
  kind: text("kind", { ...was, width: 100 }),
  value: text("value", { ...was, width: 90 }),
  size: number("size", SIZE, { ...was, width: 112 }),
  tolerance: text("tolerance", { ...was, width: 84 }),
  watts: amount("watts", WATTS, IN_WATTS, was),
  volts: amount("volts", VOLTS, IN_VOLTS, was),
  type: text("type", { ...was, width: 190 }),
  usedAs: text("used as", { ...was, width: 150 }),
  unsure: text("unsure", { ...was, width: 150 }),
  more: text("more", { ...aside, width: 110 }),
  parent: text("part of", { ...aside, width: 70 }),
  perSet: number("pieces", PIECES, { ...aside, width: 60 }),
  from: text("from", { ...aside, width: 200 }),
  rules: text("rules", { ...aside, width: 40 }),
  found: text("found", { ...found, width: 90 }),
  voltsThere: amount("volts there", VOLTS, IN_VOLTS, found),
  peakVoltsThere: amount("peak volts there", VOLTS, IN_VOLTS, { ...found, width: 84 }),
  ampsThere: amount("amps there", AMPS, IN_AMPS, found),
  celsiusThere: degrees("heat there", CELSIUS, found),
  mostCapacitance: text("most capacitance", { ...found, width: 84 }),
  gridResistor: text("grid resistor", { ...found, width: 84 }),
  roomLength: amount("room length", MILLIMETRES, IN_MILLIMETRES, { ...found, width: 76 }),
  roomDiameter: amount("room diameter", MILLIMETRES, IN_MILLIMETRES, { ...found, width: 76 }),
  tagSpan: amount("tag span", MILLIMETRES, IN_MILLIMETRES, { ...found, width: 70 }),
  alsoKnown: text("also known", { ...found, width: 200 }),
  reading: text("reading", { ...yours, group: "measured", width: 90 }),
  inPlace: word("in place", IN_PLACE, { ...yours, group: "measured", width: 76 }),
  accuracy: number("meter accuracy", "0.0%", { ...yours, group: "measured", width: 70 }),
  verdict: text("verdict", { ...worked, group: "measured", width: 100 }),
  action: text("action", { ...worked, group: "to do", width: 80 }),
  because: text("because", { ...worked, group: "to do", width: 280 }),
  newValue: text("new value", { ...worked, group: "new", width: 100 }),
  newSize: number("new size", SIZE, { ...worked, group: "new", width: 112 }),
  newTolerance: text("new tolerance", { ...worked, group: "new", width: 90 }),
  newWatts: amount("new watts", WATTS, IN_WATTS, { ...worked, group: "new" }),
  newVolts: amount("new volts", VOLTS, IN_VOLTS, { ...worked, group: "new" }),
  newType: text("new type", { ...worked, group: "new", width: 170 }),
  look: text("look", { ...worked, group: "new", width: 260 }),
  alike: text("alike", { ...yours, group: "bought", width: 60 }),
  offer: text("offer", { ...yours, group: "bought", width: 150 }),
  fit: text("how it fits", { ...yours, group: "bought", width: 160 }),
  restsOn: text("rests on", { ...yours, group: "bought", width: 70 }),
  quantity: number("quantity", PIECES, { ...yours, group: "bought", width: 70 }),
  came: number("came", PIECES, { ...yours, group: "bought", width: 60 }),
  fitted: text("fitted", { ...yours, group: "fitted", width: 90 }),
  fittedReading: text("fitted reading", { ...yours, group: "fitted", width: 90 }),
  stopsSeen: text("stops seen", { ...yours, group: "fitted", width: 90 }),
  lifted: yes("lead lifted", { ...yours, group: "fitted", width: 70 }),
  remark: text("remark", { ...yours, group: "fitted", width: 200 }),
});
export type PartsRow = RowOf<typeof PARTS_SHEET>;
