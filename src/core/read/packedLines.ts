import type { SourceLine } from "./sourceLine.js";

/**
 * The lines of a long table in little room: the text of each window of lines as one string, where in it each line starts,
 * and the number of each line in its source.
 */
export type PackedLines = {
  readonly windows: readonly string[];
  readonly starts: Int32Array;
  readonly numbers: Int32Array;
};

/** Takes lines in one by one and packs them; none is kept. */
export type LinePacker = { readonly add: (line: SourceLine) => void; readonly finish: () => PackedLines };

const WINDOW = 4096;

/** Stands between the cells of a line: the unit separator, which no list prints. @see ISO/IEC 646 */
const BETWEEN = "\u001f";

/** Packs lines as they come. @example const packer = linePacker(); for (const line of lines) packer.add(line); */
export function linePacker(): LinePacker {
  const [windows, starts, numbers]: [string[], number[], number[]] = [[], [], []];
  let waiting: string[] = [];
  let length = 0;
  const close = () => {
    windows.push(waiting.join(""));
    waiting = [];
    length = 0;
  };
  const add = ({ number, text, cells }: SourceLine) => {
    const packed = cells === null ? text : cells.join(BETWEEN);
    starts.push(length);
    numbers.push(number);
    waiting.push(packed);
    length += packed.length;
    if (waiting.length === WINDOW) close();
  };
  const finish = () => {
    if (waiting.length > 0) close();
    return { windows, starts: Int32Array.from(starts), numbers: Int32Array.from(numbers) };
  };
  return { add, finish };
}

/** How many lines there are. */
export const countOfLines = ({ starts }: PackedLines): number => starts.length;

/** One of the lines, counted from 0: its cells are as they were, its text is its cells with commas between. */
export function lineAt({ windows, starts, numbers }: PackedLines, at: number): SourceLine {
  const window = windows[Math.floor(at / WINDOW)]!;
  const isLast = (at + 1) % WINDOW === 0 || at + 1 === starts.length;
  const cells = window.slice(starts[at], isLast ? undefined : starts[at + 1]).split(BETWEEN);
  return { number: numbers[at]!, text: cells.length === 1 ? cells[0]! : cells.join(", "), cells };
}

/** All lines, from the first on. */
export function* linesIn(packed: PackedLines): Generator<SourceLine> {
  for (let at = 0; at < packed.starts.length; at++) yield lineAt(packed, at);
}

/** At most so many lines: the first ones, where the heads stand, and others spread evenly over the rest. */
export function sampleOf(packed: PackedLines, first: number, others: number): SourceLine[] {
  const count = packed.starts.length;
  const step = Math.max(1, Math.ceil((count - first) / others));
  const places = Array.from({ length: Math.min(first, count) }, (_, at) => at);
  for (let at = first; at < count; at += step) places.push(at);
  return places.map((at) => lineAt(packed, at));
}

/** The room that the lines take, in bytes: a character of a text that has only Latin-1 ones takes one, else two. */
export function bytesOfLines({ windows, starts, numbers }: PackedLines): number {
  const texts = windows.reduce((sum, text) => sum + text.length * (/[\u0100-\uffff]/.test(text) ? 2 : 1), 0);
  return texts + starts.byteLength + numbers.byteLength;
}
