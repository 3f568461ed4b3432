import type { OpenRow } from "./continuation.js";
import { joinBroken } from "./continuation.js";
import type { Strip } from "./pieces.js";
import type { Head, Layout, Note, RowCell } from "./row.js";

/** Tells designators from other text: their names, or null. */
export type ReadName = (text: string) => readonly string[] | null;

/** Where the walk through a document stands; it is filled line by line and thrown away at the end. */
export type Walk = {
  readonly readName: ReadName;
  readonly rows: OpenRow[];
  readonly notes: { lines: number[]; text: string; section: string | null; heading: string | null }[];
  readonly remarks: { lines: number[]; text: string; section: string | null }[];
  readonly furniture: number[];
  readonly unread: number[];
  readonly sections: { name: string; afterHead: boolean }[];
  /** The designators of the rows looked at so far, each behind its section. */
  readonly seen: { rows: number; readonly names: Set<string> };
  heads: readonly Head[] | null;
  /** Whether bare numbers name the parts under these heads. */
  numbered: boolean;
  table: number;
  section: string | null;
  pending: { readonly name: string; readonly afterHead: boolean } | null;
  heading: string | null;
  open: OpenRow | null;
  blank: boolean;
  /** Whether a drawn line stands right above. */
  ruled: boolean;
  /** Whether a head has been repeated since the open row. */
  headed: boolean;
  /** Whether something that is no row stands between the open row and here. */
  apart: boolean;
  errata: boolean;
};

/** A walk that has seen nothing yet. */
export function startWalk(readName: ReadName): Walk {
  return {
    readName,
    rows: [],
    notes: [],
    remarks: [],
    furniture: [],
    unread: [],
    sections: [],
    seen: { rows: 0, names: new Set() },
    heads: null,
    numbered: false,
    table: 0,
    section: null,
    pending: null,
    heading: null,
    open: null,
    blank: true,
    ruled: false,
    headed: false,
    apart: false,
    errata: false,
  };
}

/** Opens a row for a new part. A section's heading that was waiting for its first part takes effect. */
export function openRow(walk: Walk, strip: Strip, cells: readonly RowCell[]): void {
  if (walk.pending !== null) {
    if (walk.pending.name !== walk.section) walk.sections.push(walk.pending);
    walk.section = walk.pending.name;
    walk.pending = null;
  }
  const { section, heading, table } = walk;
  const broken = cells.length === 1 && strip.form === "gaps";
  const start = strip.pieces[0]?.start ?? 0;
  const textStart = strip.pieces[1]?.start ?? start + 1;
  walk.open = { lines: [...strip.numbers], cells: [...cells], section, heading, table, start, textStart, broken };
  walk.apart = false;
  walk.headed = false;
  walk.rows.push(walk.open);
}

const NUMBERED = /^\s*(?:\(?[a-z0-9]{1,2}[.)]|note\b|n\.?b\.?|[*#†‡•-])/i;

/** Keeps a line as a note; it goes on with the note above unless a blank line or a number parts them. */
export function takeNote(walk: Walk, strip: Strip, text: string): void {
  walk.furniture.push(...strip.numbers);
  const last = walk.notes.at(-1);
  const follows =
    last &&
    strip.form !== "cells" &&
    !walk.blank &&
    last.lines.at(-1)! >= strip.numbers[0]! - 1 &&
    !NUMBERED.test(text);
  if (follows) {
    last.text = joinBroken(last.text, text.trim());
    last.lines.push(...strip.numbers);
  } else {
    const { pending, heading } = walk;
    walk.notes.push({ lines: [...strip.numbers], text: text.trim(), section: pending?.name ?? null, heading });
  }
}

/** The document taken apart. A lone heading before all columns and parts is a title and names no section. */
export function finish(walk: Walk): Layout {
  const only = walk.sections.length === 1 && !walk.sections[0]!.afterHead ? walk.sections[0]!.name : null;
  const real = new Set(walk.sections.map((section) => section.name).filter((name) => name !== only));
  const scoped = (note: Note): Note => ({
    ...note,
    section: note.section && real.has(note.section) ? note.section : null,
  });
  return {
    rows: walk.rows.map(({ lines, cells, section, heading, table }) => ({
      lines,
      cells,
      section: section === only ? null : section,
      heading,
      table,
    })),
    notes: walk.notes.map(scoped),
    remarks: walk.remarks,
    furniture: walk.furniture,
    unread: walk.unread,
  };
}
