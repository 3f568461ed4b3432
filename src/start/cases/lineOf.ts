import { type Kind, type ListedPart, NOTHING_LISTED, readList } from "../../core/index.js";

/** The letter under which a nameless line of a kind is read; kinds without one have no value to read. */
const LETTERS: Readonly<Partial<Record<Kind, string>>> = { resistor: "R", capacitor: "C", network: "PC" };

/** What one line of a list says, as a part of the kind it is known to be; nothing where the line holds no part. */
export function lineOf(line: string, kind: Kind): ListedPart {
  const read = (text: string) => readList([{ number: 1, text, cells: null }]).parts[0];
  const letter = LETTERS[kind];
  const named = read(line);
  const fits = (part: ListedPart | undefined) => part && (part.kind === kind || part.value !== null);
  if (fits(named)) return { ...named!, kind, printed: line };
  const plain = line.replace(/:.*$/, "");
  const nameless = letter && [`${letter}1 ${line}`, `C1 ${plain}`].map(read).find(fits);
  const designators = named?.designators ?? /^[A-Z]{1,3}-?\d{1,4}\b/.exec(line)?.slice(0, 1) ?? [];
  return { ...(nameless || NOTHING_LISTED), designators, kind, printed: line };
}
