/** TABLE: the columns of Parts, in the order of thought; whatever a worked-out column rests on stands to its left. */
import { number, text, word, yes } from "../column.js";
import { type RowOf, sheet } from "../sheet.js";
import { AMPS, MILLIMETRES, PIECES, SIZE, VOLTS, WATTS } from "./formats.js";

const where = { group: "where", tint: "printed" } as const;
const was = { group: "was", tint: "printed" } as const;
const yours = { tint: "yours" } as const;
const worked = { tint: "worked", live: true } as const;

/** Where a reading was taken: with the part in its place, or with one lead lifted. */
export const IN_PLACE = ["in place", "lifted"] as const;

/** Parts: one row a part, from the list's own writing to what was fitted. */
export const PARTS_SHEET = sheet("Parts", 2, {
  id: text("id", { ...where, width: 64 }),
  designator: text("designator", { ...where, width: 104 }),
  printed: text("printed", { width: 170, tint: "printed" }),
  section: text("section", { ...where, width: 120 }),
  project: text("set", { ...where, width: 56 }),
  document: text("document", { ...where, width: 110 }),
  place: text("place", { ...yours, group: "where", width: 110 }),
  sameAs: text("same part as", { ...yours, group: "where", width: 116 }),
  kind: text("kind", { ...was, width: 100 }),
  value: text("value", { ...was, width: 90 }),
  size: number("size", SIZE, { ...was, width: 76 }),
  tolerance: text("tolerance", { ...was, width: 84 }),
  watts: number("watts", WATTS, was),
  volts: number("volts", VOLTS, was),
  type: text("type", { ...was, width: 190 }),
  usedAs: text("used as", { ...was, width: 150 }),
  more: text("more", { ...was, width: 110 }),
  parent: text("part of", { ...was, width: 70 }),
  perSet: number("pieces", PIECES, { ...was, width: 60 }),
  from: text("from", { ...was, width: 200 }),
  unsure: text("unsure", { ...was, width: 150 }),
  rules: text("rules", { ...was, width: 40 }),
  voltsThere: number("volts there", VOLTS, { ...yours, group: "found" }),
  peakVoltsThere: number("peak volts there", VOLTS, { ...yours, group: "found", width: 84 }),
  ampsThere: number("amps there", AMPS, { ...yours, group: "found" }),
  mostCapacitance: text("most capacitance", { ...yours, group: "found", width: 84 }),
  gridResistor: text("grid resistor", { ...yours, group: "found", width: 84 }),
  roomLength: number("room length", MILLIMETRES, { ...yours, group: "found", width: 76 }),
  roomDiameter: number("room diameter", MILLIMETRES, { ...yours, group: "found", width: 76 }),
  found: text("found", { ...yours, group: "found", width: 90 }),
  reading: text("reading", { ...yours, group: "measured", width: 90 }),
  inPlace: word("in place", IN_PLACE, { ...yours, group: "measured", width: 76 }),
  accuracy: number("meter accuracy", "0.0%", { ...yours, group: "measured", width: 70 }),
  verdict: text("verdict", { ...worked, group: "measured", width: 100 }),
  action: text("action", { ...worked, group: "to do", width: 80 }),
  because: text("because", { ...worked, group: "to do", width: 280 }),
  newValue: text("new value", { ...worked, group: "new", width: 100 }),
  newSize: number("new size", SIZE, { ...worked, group: "new", width: 76 }),
  newTolerance: text("new tolerance", { ...worked, group: "new", width: 90 }),
  newWatts: number("new watts", WATTS, { ...worked, group: "new" }),
  newVolts: number("new volts", VOLTS, { ...worked, group: "new" }),
  newType: text("new type", { ...worked, group: "new", width: 170 }),
  look: text("look", { ...worked, group: "new", width: 260 }),
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
