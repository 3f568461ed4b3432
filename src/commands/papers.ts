import { CAUTIONS, type PartsRow, type ProjectsRow, SET_CAUTIONS } from "../core/index.js";
import type { Book } from "./book.js";
import { cautionsOf } from "./fit.js";
import { namesInLists, partsOnce } from "./once.js";
import { isBought } from "./overview.js";

/** A printed sheet before it is laid out: heads and rows of text, and lines above them. */
export type PaperContent = {
  readonly above: readonly string[];
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
};

type Made = { readonly id: string; readonly name: string; readonly of: (rows: readonly PartsRow[]) => PaperContent };

const unit = (figure: number | null, name: string) => (figure === null ? "" : `${figure} ${name}`);
const line = (...words: readonly (string | null)[]) => words.filter(Boolean).join(" ");
const was = (row: PartsRow) => line(row.value, row.tolerance, unit(row.watts, "W"), unit(row.volts, "V"));
const will = (row: PartsRow) =>
  line(row.newValue, row.newTolerance, unit(row.newWatts, "W"), unit(row.newVolts, "V"), row.newType);
const stops = (row: PartsRow) =>
  cautionsOf(row)
    .filter(({ level }) => level !== "note")
    .map(({ text }) => text)
    .join(" ");

/** The papers that can be printed for a set. */
export const PAPERS: readonly Made[] = [
  {
    id: "fit",
    name: "Fit sheet",
    of: (rows) => ({
      above: ["One part at a time. Write the reading of the part taken out and of the part put in."],
      heads: ["Part", "Where", "Out", "In", "Look", "Read out", "Read in", "Done"],
      rows: rows
        .filter(isBought)
        .map((row) => [
          row.designator ?? "",
          line(row.section, row.place),
          was(row),
          will(row),
          stops(row),
          row.reading ?? "",
          row.fittedReading ?? "",
          row.fitted ?? "",
        ]),
    }),
  },
  {
    id: "bench",
    name: "Reading sheet",
    of: (rows) => ({
      above: ["Readings to take, in the order of the list. Note whether a lead was lifted."],
      heads: ["Part", "Where", "Printed", "Limits", "Reading", "Lifted", "Remark"],
      rows: rows
        .filter(({ action }) => action === "test" || action === "lift")
        .map((row) => [row.designator ?? "", row.section ?? "", row.value ?? "", row.tolerance ?? "", "", "", ""]),
    }),
  },
  {
    id: "labels",
    name: "Bag labels",
    of: (rows) => ({
      above: [],
      heads: ["Set and part", "New part", "Replaces", "Offer"],
      rows: rows
        .filter((row) => isBought(row) && row.fitted === null)
        .map((row) => [line(row.id, row.section, row.designator), will(row), was(row), row.offer ?? ""]),
    }),
  },
  {
    id: "report",
    name: "Report for the owner",
    of: (rows) => ({
      above: [
        `${rows.filter(isBought).length} parts to be replaced, ${rows.filter(({ action }) => action === "keep").length} kept.`,
      ],
      heads: ["Part", "Was", "Reading", "What was done", "Because"],
      rows: rows.map((row) => [
        line(row.section, row.designator),
        was(row),
        line(row.reading, row.verdict && `(${row.verdict})`),
        row.action === "replace" ? `replace: ${will(row)}` : (row.action ?? "open"),
        row.because ?? "",
      ]),
    }),
  },
  {
    id: "power",
    name: "First power",
    of: () => ({
      above: ["In this order. Write the line volts first; stop where a figure is not what the document says."],
      heads: ["Step", "Expected", "Read"],
      rows: [
        ["Every filter proved 0 V, no lead left lifted, nothing loose in the chassis", "", ""],
        ["Line volts at the outlet", "", ""],
        ["Lamp in series with the line: it goes dim", "", ""],
        ["First filter", "", ""],
        ["Second filter", "", ""],
        ["Grids of the output tubes", "0 V", ""],
        ["Cathodes of the output tubes", "", ""],
        ["Line to exposed metal, both ways round", "", ""],
        ["After one hour: heat of transformer and filters", "", ""],
      ],
    }),
  },
];

/** One paper of a set, a part that stands in two lists once; the stops of the set stand above it, whatever the paper is. */
export function paperOf(book: Book, set: ProjectsRow | null, id: string): PaperContent & { readonly title: string } {
  const made = PAPERS.find((paper) => paper.id === id) ?? PAPERS[0]!;
  const own = partsOnce(book).filter(({ values }) => set === null || values.project === set.short);
  const nameOf = namesInLists(book);
  const rows = own.map((row) => ({ ...row.values, designator: nameOf(row) || null }));
  const content = made.of(rows);
  return {
    ...content,
    title: line(made.name, set?.name ? `- ${set.name}` : null),
    above: [...setStops(set), ...content.above],
  };
}

/** The stops of a set as sentences, by what its card says. */
export function setStops(set: ProjectsRow | null): readonly string[] {
  const holds: Readonly<Record<string, boolean | null | undefined>> = {
    any: true,
    "picture-tube": set?.pictureTube,
    "live-chassis": set?.liveChassis,
  };
  const ids = SET_CAUTIONS.filter(({ when, asked }) => asked === "sitting" && holds[when]).flatMap(
    (each) => each.cautions,
  );
  return CAUTIONS.filter(({ id }) => ids.includes(id)).map(({ text }) => `Stop: ${text}`);
}
