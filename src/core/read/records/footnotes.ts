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

/** Records with what the footnotes they point to say, as a remark; a note that only one points to belongs to its lines. */
export function withFootnotes(records: readonly ListRecord[], notes: readonly Note[]): readonly ListRecord[] {
  const footnotes = notes.flatMap(footnoteOf);
  if (footnotes.length === 0) return records;
  const pointed = records.map(({ cells }) => new Set(cells.flatMap(pointersIn)));
  const isOwn = ({ key }: Footnote) => pointed.filter((keys) => keys.has(key)).length === 1;
  return records.map((record, i) => {
    const own = footnotes.filter(({ key }) => pointed[i]!.has(key));
    if (own.length === 0) return record;
    const remarks = own.map(({ said }): RowCell => ({ role: "remarks", text: said, unit: null }));
    const lines = own.filter(isOwn).flatMap((footnote) => footnote.lines);
    return { ...record, cells: [...record.cells, ...remarks], lines: [...record.lines, ...lines] };
  });
}
