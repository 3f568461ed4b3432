import { cellsOf, type PastedHead, type PastedRole } from "./pastedHeads.js";

/** One line of a pasted table: whose it is, and its other cells as words that say by themselves what they are. */
export type PastedRow = {
  readonly id: string;
  readonly part: string;
  readonly section: string | null;
  readonly words: readonly string[];
};

/** A line of a pasted table under its heads. @example rowOfCells("C4\t0.1\t3", heads).words // ["0.1", "leakage 3 µA"] */
export function rowOfCells(line: string, heads: readonly PastedHead[]): PastedRow {
  const spaced = cellsOf(line);
  const cells = spaced.length > 1 ? spaced : line.trim().split(/\s+/);
  const cellOf = (role: PastedRole) => cells[heads.findIndex((head) => head.role === role)] ?? "";
  const words = heads.map((head, at) => wordsOf(head, cells[at] ?? ""));
  return { id: cellOf("id"), part: cellOf("part"), section: cellOf("section") || null, words };
}

/** What the cells of a line say, as one text for `pastedWords`. */
export const textOfCells = ({ words }: PastedRow): string => words.filter(Boolean).join("; ");

const isFigure = (cell: string) => /^[\d.,]+$/.test(cell);
const YES = /^(?:yes|y|x|true|1|lifted)$/i;
const NO = /^(?:no|n|0|false|in)$/i;

function wordsOf({ role, head, unit }: PastedHead, cell: string): string {
  if (cell === "" || cell === "-") return "";
  const figure = isFigure(cell) && unit ? `${cell} ${unit}` : cell;
  switch (role) {
    case "reading":
      return figure;
    case "leakage":
    case "ESR":
    case "insulation":
      return `${role} ${figure}`;
    case "inPlace":
      return placeOf(head, cell);
    case "accuracy":
      return `±${cell.replace(/^±|\s*%$/g, "")} %`;
    case "remark":
      return cell;
    default:
      return "";
  }
}

/** "yes" below "lifted" is lifted, below "in place" it is in place. */
function placeOf(head: string, cell: string): string {
  const asksLifted = !/in[ -]?(?:place|circuit)/i.test(head);
  if (YES.test(cell)) return asksLifted || /^lifted$/i.test(cell) ? "lifted" : "in place";
  if (NO.test(cell)) return asksLifted ? "in place" : "lifted";
  return cell;
}
