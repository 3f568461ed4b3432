import type { Kind } from "../../part.js";
import type { Meaning } from "../words/phrases.js";
import { touches } from "../words/token.js";
import type { Words } from "../words/words.js";

/** The class letters of designators: IEEE 200-1975 and the habits of British and German lists (common practice). */
const LETTERS: Readonly<Record<string, Kind>> = {
  R: "resistor", RX: "resistor", C: "capacitor", CV: "capacitor", VC: "capacitor", TC: "capacitor", CT: "capacitor",
  VR: "potentiometer", RV: "potentiometer", POT: "potentiometer", RT: "thermistor", TH: "thermistor", NTC: "thermistor", RN: "network", N: "network", RC: "network", Z: "network", PC: "network",
  L: "inductor", CH: "inductor", DR: "inductor", RFC: "inductor", T: "transformer", TR: "transformer", IFT: "transformer",
  CR: "rectifier", D: "rectifier", SR: "rectifier", MR: "rectifier", GL: "rectifier", REC: "rectifier", SE: "rectifier",
  F: "fuse", SI: "fuse", FS: "fuse", FU: "fuse", I: "lamp", PL: "lamp", LP: "lamp", DS: "lamp", LA: "lamp", NE: "lamp", B: "lamp",
  W: "resistor", V: "tube", RÖ: "tube", VT: "tube", RO: "tube", S: "switch", SW: "switch",
}; // biome-ignore format: a table

/** Kinds that a description's own noun may make of a part with these letters, whatever the letters say. */
const OVERRIDES: ReadonlySet<Kind> = new Set(["potentiometer", "thermistor", "lamp", "rectifier", "network", "fuse"]);

/** The letters of a designator that tell the class: the last group before the number (A-R193 is R). */
const classLetters = (name: string) =>
  (/([A-Za-zÄÖÜäöü]+)[-.]?\d+(?:-\d+)?[A-Za-z]?$/.exec(name)?.[1] ?? name).toUpperCase();

type Noun = {
  readonly field: "kind" | "other" | "turns";
  readonly value: string;
  readonly key: string;
  readonly from: number;
};

/** The nouns of a text in order, without those behind "with", "wound on", "for" or in brackets. */
function nounsOf(words: Words): Noun[] {
  const stop = words.tokens.findIndex(
    (token, at) => at > 0 && /^(?:w|with|for|from|incl|includes|on|to|of|mit|\()$/.test(token.key),
  );
  return words.meanings.flatMap((meaning) => {
    const isNoun = meaning.field === "kind" || meaning.field === "other" || meaning.field === "turns";
    return isNoun && (stop < 0 || meaning.from < stop)
      ? [
          {
            field: meaning.field as Noun["field"],
            value: meaning.value,
            key: words.tokens[meaning.from]!.key,
            from: meaning.from,
          },
        ]
      : [];
  });
}

/** What kind of thing a row is: by its letters, corrected by the nouns of its description and the heading above. */
export function kindOf(names: readonly string[], words: readonly Words[], heading: Words | null): Kind {
  const nouns = words.flatMap(nounsOf);
  const byLetters = tellsByLetters(names[0], nouns) ? LETTERS[classLetters(names[0]!)] : undefined;
  if (byLetters === "resistor") return kindOfResistor(words, nouns, heading);
  if (byLetters === "network")
    return nouns.find((noun) => noun.field === "kind" && noun.value === "transformer") ? "transformer" : "network";
  if (byLetters) return corrected(byLetters, nouns);
  const byNouns = kindOfNouns(words, nouns, names.length > 0);
  if (names[0] && classLetters(names[0]) === "P" && isControl(words)) return "potentiometer";
  if (byNouns === "resistor") return kindOfResistor(words, nouns, heading);
  return byNouns === "other" && nouns.length === 0 ? (kindOfHeading(heading) ?? "other") : byNouns;
}

/** Letters without a number are a word cut short (VC, DIAL) where the description has a noun. */
const tellsByLetters = (name: string | undefined, nouns: readonly Noun[]) =>
  name !== undefined && (/\d/.test(name) || nouns.length === 0);

/** The letters hold unless the first noun says otherwise: a clamp under C, a lamp under M. */
function corrected(kind: Kind, nouns: readonly Noun[]): Kind {
  const first = nouns[0];
  const isOther = first?.field === "other" && first.from === 0;
  if (isOther && (kind === "capacitor" || (kind === "transformer" && nouns.every(({ field }) => field === "other"))))
    return "other";
  const own = first?.field === "kind" && OVERRIDES.has(first.value as Kind) ? (first.value as Kind) : kind;
  return kind === "capacitor" || kind === "tube" || kind === "transformer" ? kind : own;
}

const TRIMMER = /^trimmers?$/;

function kindOfResistor(words: readonly Words[], nouns: readonly Noun[], heading: Words | null): Kind {
  if (nouns.some((noun) => TRIMMER.test(noun.key))) return "potentiometer";
  const named = nouns.find((noun) => noun.value === "thermistor" || noun.value === "potentiometer");
  const isWound = words.some((text) => text.meanings.some((meaning) => meaning.value === "wirewound"));
  if (named && !(named.value === "thermistor" && isWound)) return named.value as Kind;
  const hasTaper = words.some((text) => text.meanings.some((meaning) => isTaper(text, meaning)));
  const isVariable = words.some((text) =>
    text.meanings.some((m) => m.field === "mark" && m.value === "variable" && !isSlider(text)),
  );
  const first = words[0];
  const turns = nouns.some((noun) => noun.field === "turns" && (!first || namesControl(noun.from, first)));
  const underControls =
    heading?.meanings.some((meaning) => meaning.value === "potentiometer" && meaning.from === 0) ?? false;
  return hasTaper || isVariable || turns || underControls || words.some(beginsWithTaper) ? "potentiometer" : "resistor";
}

/** "Contrast, 5K", "5K contrast, with S1": the word stands before the first amount, or right behind it and alone. */
function namesControl(at: number, { tokens, amounts, meanings }: Words): boolean {
  const amount = amounts[0];
  if (!amount || at < amount.from) return true;
  const end = meanings.find(({ from }) => from === at)?.to ?? at + 1;
  const isNext = at === amount.to || (at === amount.to + 1 && tokens[amount.to]!.text === ",");
  return isNext && /^(?:,|;|\(|w|with|)$/.test(tokens[end]?.key ?? "");
}

/** "audio" is a taper where it stands by itself; beside another word ("first audio", "audio output") it names a stage. */
function isTaper({ tokens }: Words, { field, from, to }: Meaning): boolean {
  if (field !== "taper") return false;
  const isBareAudio = to - from === 1 && tokens[from]!.key === "audio";
  return (
    !isBareAudio ||
    ((tokens[from - 1]?.type !== "word" || tokens[from - 1]!.lexeme.unit !== null) && tokens[to]?.type !== "word")
  );
}

/** "A500K": only a control has a letter for its taper written to the value. */
const beginsWithTaper = ({ tokens: [letter, figure] }: Words) =>
  letter?.type === "word" && /^[ABC]$/.test(letter.text) && figure?.type === "number" && touches(letter, figure);

/** An adjustable power resistor with a sliding band is still a resistor. */
const isSlider = (words: Words) => /\b(?:slider|sliding|band)\b/i.test(words.text);

/** P is a plug or a potentiometer: a taper tells. */
const isControl = (words: readonly Words[]) =>
  words.some((text) => text.meanings.some((meaning) => meaning.field === "taper"));

/** The one kind that a heading names (TUBES), for lines that name nothing (12AT7). */
function kindOfHeading(heading: Words | null): Kind | null {
  const kinds = new Set(heading?.meanings.flatMap(({ field, value }) => (field === "kind" ? [value as Kind] : [])));
  return kinds.size === 1 ? [...kinds][0]! : null;
}

/** ".1 mfd 1000 volts paper" names nothing but is a capacitor. */
function kindOfAmount(words: Words): Kind {
  const measure = words.amounts[0]?.from === 0 ? words.amounts[0].figures[0]!.unit?.measure : null;
  return measure === "farad" ? "capacitor" : measure === "henry" ? "inductor" : "other";
}

/** Without telling letters the last noun before the first comma or figure decides: "Condenser mounting wafer" is no condenser. */
function kindOfNouns(words: readonly Words[], nouns: readonly Noun[], isNamed: boolean): Kind {
  const text = words.find((candidate) => candidate.tokens.length > 0);
  if (!text) return "other";
  const first = nouns[0];
  if (isNamed && first) return first.field === "kind" ? (first.value as Kind) : "other";
  const start = text.tokens[0]!.type === "word" ? 0 : (text.amounts[0]?.to ?? 0);
  const end = text.tokens.findIndex(
    (token, at) => at >= Math.max(1, start) && (/^[,;:(]$/.test(token.text) || token.type === "number"),
  );
  const segment = text.meanings.filter((meaning) => meaning.from < (end < 0 ? text.tokens.length : end));
  if (nouns.some((noun) => noun.field === "other" && noun.from < (end < 0 ? text.tokens.length : end))) return "other";
  const last = segment.filter((meaning) => meaning.field === "kind" || meaning.field === "dielectric").at(-1);
  if (!last) return segment.length === 0 ? kindOfAmount(text) : "other";
  const rest = text.tokens.slice(last.to, end < 0 ? undefined : end);
  const isHead = rest.every(
    (token) =>
      token.type !== "word" || segment.some((m) => text.tokens[m.from] === token || m.to > text.tokens.indexOf(token)),
  );
  if (!isHead) return "other";
  return last.field === "dielectric" ? "capacitor" : (last.value as Kind);
}
