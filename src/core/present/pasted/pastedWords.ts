import type { Kind } from "../../part.js";
import { attempt, PartsError } from "../../problem.js";
import { joinReadings, readReading, type TypedReading } from "../readingText.js";
import type { IN_PLACE } from "../sheets/parts.js";

/** What one piece of pasted text says of a part; null where it says nothing of it. */
export type PastedWords = {
  readonly readings: readonly TypedReading[];
  readonly inPlace: (typeof IN_PLACE)[number] | null;
  /** The meter's, as a ratio. */
  readonly accuracy: number | null;
  /** Words that are no reading; they go into the log. */
  readonly remark: string | null;
};

const LIFTED =
  /(?:^|[\s,;(])(?:(?:one|a|with)\s+)*(?:(?:lead|leg|end)\s+)?(?:lifted|lift|out of (?:circuit|set)|unsoldered|disconnected)(?=$|[\s,;).])[).]?/i;
const IN_ITS_PLACE = /(?:^|[\s,;(])in[ -]?(?:place|circuit|situ)(?=$|[\s,;).])[).]?/i;
/** A signed or named share is the meter's whatever its size; a bare one only where no drift would be so small. */
const NAMED_SHARE =
  /(?:^|[\s,;(])(?:(?:meter|accuracy|acc\.?)\s*)?(?:±|\+\/-|(?<=(?:meter|accuracy|acc\.?)\s*))\s*(\d+(?:[.,]\d+)?)\s*%\)?/i;
const BARE_SHARE = /(?:^|[\s,;(])([0-5](?:[.,]\d+)?)\s*%\)?(?=$|[\s,;])/;

/** Names of a quantity that stand before its figure, and the unit its bare figure has. */
const NAMED: readonly (readonly [RegExp, string])[] = [
  [/^leak(?:age|s)?[:=]?$/i, "µA"],
  [/^esr[:=]?$/i, "Ω"],
  [/^(?:insulation|ins|ir)[:=.]?$/i, "MΩ"],
];
const FILLER = /^(?:reads?|reading|measured|measures|is|now|=|:|-|at)$/i;

/** The longest run of words that may be one reading: "1 1/2 meg ohm". */
const LONGEST = 4;

/**
 * The readings, the place, the meter and the rest that some text behind a designator says.
 *
 * @param printed The part's value as its row writes it; a bare figure takes its unit.
 * @throws PartsError "unreadable" where no reading is in it.
 * @example pastedWords("612k lifted ±1 %", "470 k", "resistor").inPlace // "lifted"
 */
export function pastedWords(text: string, printed: string | null, kind: Kind): PastedWords {
  const share = NAMED_SHARE.exec(text) ?? BARE_SHARE.exec(text);
  const [isLifted, isIn] = [LIFTED.test(text), IN_ITS_PLACE.test(text)];
  const bare = [share?.[0] ?? "", LIFTED, IN_ITS_PLACE].reduce<string>((rest, part) => rest.replace(part, " "), text);
  const { readings, rest } = readingsIn(wordsOf(bare), printed, kind);
  if (readings.length === 0) {
    const words = bare.trim() || text.trim();
    throw words ? unreadable(words, printed, kind) : new PartsError("unreadable", text, "Write the reading behind it.");
  }
  return {
    readings,
    inPlace: isLifted ? "lifted" : isIn ? "in place" : null,
    accuracy: share ? Number(share[1]!.replace(",", ".")) / 100 : null,
    remark: rest.join(" ") || null,
  };
}

/** Words between blanks, semicolons, tabs, and commas that are no decimal ones. */
const wordsOf = (text: string) => text.split(/[\s;]+|,(?!\d)|(?<!\d),/).filter(Boolean);

function readingsIn(words: readonly string[], printed: string | null, kind: Kind) {
  const [readings, rest]: [TypedReading[], string[]] = [[], []];
  for (let at = 0; at < words.length; ) {
    const unit = NAMED.find(([name]) => name.test(words[at]!))?.[1];
    const found = unit ? named(words, at + 1, unit, kind) : readingAt(words, at, printed, kind, readings.length > 0);
    if (found) readings.push(found.read);
    else if (readings.length > 0 || !FILLER.test(words[at]!)) rest.push(words[at]!);
    at = found?.end ?? at + 1;
  }
  return { readings, rest };
}

/** The longest run of words from a place on that is one reading; a further reading has to bring its own unit. */
function readingAt(words: readonly string[], at: number, printed: string | null, kind: Kind, needsUnit: boolean) {
  for (let end = Math.min(words.length, at + LONGEST); end > at; end--) {
    const text = words.slice(at, end).join(" ");
    if (needsUnit && /^[\d.,]+$/.test(text)) continue;
    const read = attempt(() => readReading(text, printed, kind));
    if (read) return { read, end };
  }
  return null;
}

/** The figure behind a quantity's name, in its usual unit where it has none. */
function named(words: readonly string[], at: number, unit: string, kind: Kind) {
  const found = readingAt(words, at, null, kind, true);
  if (found) return found;
  const read = /^[\d.,]+$/.test(words[at] ?? "")
    ? attempt(() => readReading(`${words[at]} ${unit}`, null, kind))
    : null;
  return read && { read, end: at + 1 };
}

function unreadable(text: string, printed: string | null, kind: Kind): unknown {
  try {
    return readReading(text, printed, kind);
  } catch (error) {
    return error;
  }
}

/** Readings as one text. @example readingsText(readings) // "0.052 µF; 3 µA" */
export const readingsText = (readings: readonly TypedReading[]): string => joinReadings([], readings);
