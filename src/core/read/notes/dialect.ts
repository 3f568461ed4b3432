import type { Unit } from "../../quantity/notation/units.js";
import type { Note } from "../layout/row.js";
import type { Dialect } from "../parts/context.js";
import type { Words } from "../words/words.js";

const M_THOUSAND =
  /\bM\b\.?\s*(?:(?:following|after|behind)[^.,;]{0,30}\s)?(?:=|equals|means|is|denotes|stands for|indicates)\s*(?:1[,.]?000(?![,.]?\d)|thousand|one thousand)/;
const M_MILLION =
  /\bM\b\.?\s*(?:(?:following|after|behind)[^.,;]{0,30}\s)?(?:=|equals|means|is|denotes|stands for|indicates)\s*(?:1[,.]?000[,.]?000|million|one million|meg)/;

/** Above this many megohms no ordinary resistor was listed (common practice): a larger M is a thousand. */
const MOST_MEGOHMS = 22;

/** What the document prints beside its bare capital Ms: K for thousand, meg for million, and the numbers before M. */
export type Evidence = {
  readonly kPrinted: boolean;
  readonly megPrinted: boolean;
  readonly numbersBeforeM: readonly number[];
};

/** The evidence of a document's texts on resistors and of the units in its heads. */
export function evidenceOf(texts: readonly Words[], heads: readonly (Unit | null)[]): Evidence {
  const figures = texts.flatMap((words) =>
    words.amounts.flatMap((amount) => amount.figures.map((figure) => ({ figure, words }))),
  );
  const isPrefix = (factor: number) =>
    figures.filter(
      ({ figure }) =>
        figure.unit &&
        !figure.unit.capitalM &&
        figure.unit.factor === factor &&
        (figure.unit.measure ?? "ohm") === "ohm",
    );
  return {
    kPrinted: isPrefix(1e3).length > 0 || heads.some((head) => head?.measure === "ohm" && head.factor === 1e3),
    megPrinted: isPrefix(1e6).some(({ figure, words }) =>
      words.tokens.slice(figure.from, figure.to).some((token) => /^(?:meg|megohms?|megs)$/.test(token.key)),
    ),
    numbersBeforeM: figures.flatMap(({ figure }) => (figure.unit?.capitalM ? [figure.number] : [])),
  };
}

/**
 * What capital M means in a document: as the user says, else as a note says, else by the list's own evidence.
 *
 * K printed for thousand leaves million to M; meg for million leaves it thousand; so does a number of Ms that is no
 * resistor in megohms. Else it is not settled (null); nor is it where no M is printed.
 */
export function dialectOf(
  notes: readonly Note[],
  evidence: Evidence,
  user: "thousand" | "million" | undefined,
): Dialect {
  const { megPrinted } = evidence;
  if (user) return { capitalM: user, by: "user", megPrinted };
  const said = notes.map((note) => note.text).join("\n");
  if (M_THOUSAND.test(said)) return { capitalM: "thousand", by: "note", megPrinted };
  if (M_MILLION.test(said)) return { capitalM: "million", by: "note", megPrinted };
  if (evidence.numbersBeforeM.length === 0) return { capitalM: null, by: null, megPrinted };
  const isLarge = evidence.numbersBeforeM.some((number) => number > MOST_MEGOHMS);
  if (evidence.kPrinted) return { capitalM: "million", by: "list", megPrinted };
  if (megPrinted || isLarge) return { capitalM: "thousand", by: "list", megPrinted };
  return { capitalM: null, by: null, megPrinted };
}
