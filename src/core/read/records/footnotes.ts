import type { Note, RowCell } from "../layout/row.js";
import type { ListRecord } from "./listRecord.js";

/** A note that single parts point to: its number or mark, and its text. */
type Footnote = Note & { readonly key: string; readonly said: string };

const NUMBERED = /^(?:NOTES?\s*:?\s*)?\(?(\d{1,2})\s*[.):=]\s*(\S.*)$/i;
const LETTERED = /^note\s+([A-Z])\s*[.):=-]\s*(\S.*)$/i;
const MARKED = /^([*†‡§]+|[¹²³⁴⁵])\s*[.):=]?\s*(\S.*)$/;

function footnoteOf(note: Note): Footnote[] {
  const [, key, said] = NUMBERED.exec(note.text) ?? LETTERED.exec(note.text) ?? MARKED.exec(note.text) ?? [];
  return key && said ? [{ ...note, key, said }] : [];
}

const NAMED = /\bnotes?\s*(\d{1,2}|[A-Z])(?:\s*(?:,|&|and)\s*(\d{1,2}|[A-Z]))?\b/gi;
const MARK = /[*†‡§]+|[¹²³⁴⁵]/g;
const BARE = /^\d{1,2}(?:\s*[,&]\s*\d{1,2})*$/;

/** The notes that a cell points to: by a mark, "see note 3", or a bare number in a column of notes. */
function pointersIn({ role, text }: RowCell): string[] {
  const marks = text.match(MARK) ?? [];
  const named = [...text.matchAll(NAMED)].flatMap(([, first, second]) => (second ? [first!, second] : [first!]));
  return [...marks, ...named, ...(role === "remarks" && BARE.test(text) ? text.split(/\s*[,&]\s*/) : [])];
}

/**
 * Records with what the footnotes they point to say, as a remark; a note that only one points to belongs to its lines.
 *
 * Where pages begin anew with their marks, the next note below a record is its own.
 */
export function withFootnotes(records: readonly ListRecord[], notes: readonly Note[]): readonly ListRecord[] {
  const footnotes = byKey(notes.flatMap(footnoteOf));
  if (footnotes.size === 0) return records;
  const pointed = records.map((record) => {
    const keys = new Set(record.cells.flatMap(pointersIn));
    return [...footnotes].flatMap(([key, alike]) => (keys.has(key) ? [nextBelow(record, alike)] : []));
  });
  const counts = new Map<Footnote, number>();
  for (const footnote of pointed.flat()) counts.set(footnote, (counts.get(footnote) ?? 0) + 1);
  return records.map((record, i) => {
    const own = pointed[i]!;
    if (own.length === 0) return record;
    const remarks = own.map(({ said }): RowCell => ({ role: "remarks", text: said, unit: null }));
    const lines = own.filter((footnote) => counts.get(footnote) === 1).flatMap((footnote) => footnote.lines);
    return { ...record, cells: [...record.cells, ...remarks], lines: [...record.lines, ...lines] };
  });
}

/** The notes of each mark, from the top of the document down. */
function byKey(footnotes: readonly Footnote[]): ReadonlyMap<string, readonly Footnote[]> {
  const found = new Map<string, Footnote[]>();
  for (const footnote of [...footnotes].sort((a, b) => a.lines[0]! - b.lines[0]!)) {
    const alike = found.get(footnote.key);
    if (alike) alike.push(footnote);
    else found.set(footnote.key, [footnote]);
  }
  return found;
}

const nextBelow = ({ lines }: ListRecord, alike: readonly Footnote[]): Footnote =>
  alike.find((footnote) => footnote.lines[0]! > lines[0]!) ?? alike.at(-1)!;
