import type { Kind } from "../../part.js";
import type { Note } from "../layout/row.js";
import { readWords } from "../words/readWords.js";
import type { Writing } from "../words/tokens.js";
import type { Words } from "../words/words.js";

/** One statement of a note: its words, the kind it speaks of and where that stands; `at` names the note. */
export type Clause = {
  readonly words: Words;
  readonly kind: Kind | null;
  readonly subject: number;
  /** Whether the statement names its subject itself. */
  readonly named: boolean;
  readonly section: string | null;
  readonly at: string;
};

const BREAK =
  /(?<=[\p{L}\d%)"][.])\s+(?=[\p{Lu}("])|;\s+|\s+(?=All\s|ALL\s)|\s+(?=[KM]\s*=)|,\s+(?=[KM]\s*=)|(?<=[a-z)]):\s+(?=resist|cap|cond|all\b)/u;

const kindIn = ({ meanings }: Words) =>
  (meanings.find((meaning) => meaning.field === "kind")?.value as Kind | undefined) ?? null;

/** A statement that names a unit and no kind speaks of what is measured in it: "Values in mfd unless marked". */
function kindOfUnit({ tokens }: Words): Kind | null {
  const measures = tokens.map(({ type, key, lexeme }) =>
    type === "word" && key.length > 1 ? lexeme.unit?.measure : null,
  );
  if (measures.includes("farad")) return "capacitor";
  return measures.includes("henry") ? "inductor" : null;
}

/** The statements of a document's notes; one without a subject of its own goes on about the one before. */
export function clausesOf(notes: readonly Note[], writing: Writing): Clause[] {
  return notes.flatMap((note) => {
    let kind: Kind | null = note.heading ? kindIn(readWords(note.heading, writing)) : null;
    return note.text.split(BREAK).map((text): Clause => {
      const words = readWords(text, writing);
      const subject = words.meanings.find((meaning) => meaning.field === "kind");
      const own = kindIn(words);
      kind = own ?? kind;
      return {
        words,
        kind: kind ?? kindOfUnit(words),
        subject: subject?.from ?? 0,
        named: own !== null,
        section: note.section,
        at: `line ${note.lines[0]}`,
      };
    });
  });
}
