import type { Amount } from "../words/words.js";
import type { Context } from "./context.js";
import { type Clues, inBase } from "./inBase.js";
import type { Text } from "./texts.js";

/** Other values that a part may have; `current` is the one of later sets, where the line says so. */
export type Alternatives = { readonly values: readonly number[]; readonly current: number | null };

const CUE = /\b(?:early|earlier|later?|may be|also|or|(?:after|from|before) serial|supplied|some sets|certain sets)\b/i;
const BRACKETED = new Set(["brackets", "was", "marked"]);
const PAST = /\b(?:rev|orig\w*|measured|were)\b/i;
const LATER = /\b(?:later|(?:after|from) serial)\b/i;
const EARLIER = /\b(?:early|earlier|before|up to)\b/i;

/** What the brackets or remarks allow beside the value ("33K in early sets", "or 8k25", "from serial 500: 1.8 meg"). */
export function alternatives(
  texts: readonly Text[],
  main: Amount,
  clues: Omit<Clues, "head">,
  context: Context,
): Alternatives {
  const found = texts.map((text) => ({ text, values: valuesBeside(text, main, clues, context) }));
  const current = found.find(
    ({ text, values }) => values.length > 0 && LATER.test(text.words.text) && !EARLIER.test(text.words.text),
  );
  return { values: found.flatMap(({ values }) => values), current: current?.values.at(-1) ?? null };
}

function valuesBeside({ role, words }: Text, main: Amount, clues: Omit<Clues, "head">, context: Context): number[] {
  const isRemark = role === "remarks" || role === "history";
  if (!CUE.test(words.text) || (PAST.test(words.text) && isRemark)) return [];
  return words.amounts
    .filter((amount) => amount !== main && (isRemark || BRACKETED.has(amount.aside ?? "")))
    .flatMap((amount) => {
      const values = amount.figures.map((figure) =>
        figure.unit ? inBase(figure, words, { ...clues, head: null }, context)?.value : null,
      );
      const isTimes = amount.joiner === "x";
      return values
        .flatMap((value) => (value ? [isTimes ? value * amount.figures[0]!.number : value] : []))
        .slice(isTimes ? -1 : 0);
    });
}
