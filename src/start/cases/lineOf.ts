import { type Kind, type ListedPart, NOTHING_LISTED, readList } from "../../core/index.js";

/** What one line of a list says, as a part of the kind it is known to be; nothing where the line holds no part. */
export function lineOf(line: string, kind: Kind): ListedPart {
  const read = (text: string) => readList([{ number: 1, text, cells: null }]).parts[0];
  const plain = line.replace(/:.*$/, "");
  const letter = kind === "resistor" ? "R" : kind === "network" ? "PC" : "C";
  const part = [read(line), read(`${letter}1 ${line}`), read(`C1 ${plain}`)].find(
    (each) => each && (each.kind === kind || each.value !== null),
  );
  return { ...(part ?? NOTHING_LISTED), kind, printed: line };
}
