import { PartsError } from "../core/index.js";

const MARKS: readonly (readonly [encoding: string, bytes: readonly number[]])[] = [
  ["utf-8", [0xef, 0xbb, 0xbf]],
  ["utf-16le", [0xff, 0xfe]],
  ["utf-16be", [0xfe, 0xff]],
];
const MOST_JUNK = 0.01;
const SAMPLE = 100_000;

/**
 * The text of a file, line ends made one kind.
 *
 * A byte order mark decides; else UTF-8 where the bytes are that, else Windows-1252, in which old price lists come.
 *
 * @throws PartsError "unreadable" for bytes that are no text.
 * @see WHATWG Encoding Standard
 * @example decodeText(new TextEncoder().encode("R1\r\n470K")) // "R1\n470K"
 */
export function decodeText(bytes: Uint8Array, name = "this file"): string {
  const marked = MARKS.find(([, mark]) => mark.every((byte, i) => bytes[i] === byte));
  const text = marked ? new TextDecoder(marked[0]).decode(bytes) : unmarked(bytes);
  if (isJunk(text)) {
    throw new PartsError("unreadable", name, "It is not text. Give text, CSV, TSV, .xlsx, PDF, PNG or JPEG.");
  }
  return text.includes("\r") ? text.replace(/\r\n?/g, "\n") : text;
}

function unmarked(bytes: Uint8Array): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

/** Text has tabs, line ends and form feeds, but hardly any other control character. */
function isJunk(text: string): boolean {
  const sample = text.slice(0, SAMPLE);
  let junk = 0;
  for (let i = 0; i < sample.length; i++) {
    const code = sample.charCodeAt(i);
    if (code === 0xfffd || (code < 32 && code !== 9 && code !== 10 && code !== 12 && code !== 13)) junk++;
  }
  return junk > sample.length * MOST_JUNK;
}
