import { measureOf } from "../../quantity/notation/units.js";
import { readWords } from "../words/readWords.js";
import { spelledAt } from "../words/spelled.js";
import type { Token } from "../words/token.js";
import type { Figure, Words } from "../words/words.js";
import { IDEAS } from "./figureNames.js";
import type { SaidMeasure, Statement } from "./statement.js";

/** A number, or a list of one measure, at its tokens; `factor` is what one of its unit is in base units. */
type Stated = {
  readonly numbers: readonly number[];
  readonly measure: SaidMeasure | null;
  readonly factor: number;
  readonly from: number;
  readonly to: number;
};
type Range = readonly [from: number, to: number];

/** Words that begin another statement where a figure follows them: "62 MΩ at 400 V". */
const CONNECTIVES = new Set(["at", "and", "with", "from", "behind", "for", "but"]);
/** What tells of a figure beside it that it is the documents', not today's. */
const DOCUMENTED = "documented";
const DEGREES = /^(°c?|c|deg|degrees?|celsius)$/;

/**
 * The figures that a free text states, each with the words that stand by it: clause by clause, and within a clause from
 * one figure to the next.
 *
 * @example statementsIn("62 MΩ at 400 V").map(({ numbers }) => numbers) // [[62e6], [400]]
 */
export function statementsIn(text: string): readonly Statement[] {
  const words = readWords(text);
  const stated = statedIn(words);
  return clausesOf(words.tokens).flatMap((clause) => {
    const inside = stated.filter(({ from }) => from >= clause[0] && from < clause[1]);
    const isDocumented = wordsIn(words.tokens, clause).includes(DOCUMENTED);
    return statementsOf(words.tokens, clause, inside).map(({ range: [from, to], of }) => ({
      words: [
        ...wordsIn(words.tokens, [from, of.from]),
        ...wordsIn(words.tokens, [of.to, to]),
        ...(isDocumented ? [DOCUMENTED] : []),
      ],
      measure: of.measure,
      numbers: of.numbers,
      where: "text",
    }));
  });
}

/** Amounts, percentages and the spelled-out count of a stack's plates, in the order of the text. */
function statedIn({ tokens, amounts, tolerances }: Words): readonly Stated[] {
  const found = [
    ...amounts.map(({ figures, from, to }) => ofFigures(figures, tokens, from, to)),
    ...tolerances.map(({ plus, from, to }): Stated => ({ numbers: [plus], measure: "ratio", factor: 1, from, to })),
    ...tokens.flatMap(({ lexeme }, at): Stated[] => {
      const spelled = lexeme.isNumber ? spelledAt(tokens, at) : null;
      return spelled && IDEAS.plates.has(tokens[spelled.to]?.key ?? "")
        ? [{ numbers: [spelled.number], measure: null, factor: 1, from: at, to: spelled.to }]
        : [];
    }),
  ];
  const inOrder = found
    .filter((one, index) => !found.slice(0, index).some(({ from, to }) => one.from >= from && one.from < to))
    .sort((a, b) => a.from - b.from);
  return inOrder.reduceRight<readonly Stated[]>((later, one) => listed(one, later, tokens), []);
}

/** A bare number before a comma joins the list behind it, whose last one has the unit: "12, 30, 60 mA". */
function listed(one: Stated, [next, ...later]: readonly Stated[], tokens: readonly Token[]): readonly Stated[] {
  const isList = next && one.measure === null && next.from === one.to + 1 && isComma(tokens[one.to]!);
  if (!next || !isList) return next ? [one, next, ...later] : [one];
  const numbers = one.numbers.map((number) => Number((number * next.factor).toPrecision(12)));
  return [{ ...next, numbers: [...numbers, ...next.numbers], from: one.from }, ...later];
}

function ofFigures(figures: readonly Figure[], tokens: readonly Token[], from: number, to: number): Stated {
  const unit = figures.at(-1)?.unit ?? null;
  if (unit) {
    const numbers = figures.map(({ number, unit: own }) => Number((number * (own ?? unit).factor).toPrecision(12)));
    return { numbers, measure: measureOf(unit), factor: unit.factor, from, to };
  }
  const isHeat = DEGREES.test(tokens[to]?.key ?? "");
  return { numbers: figures.map(({ number }) => number), measure: isHeat ? "celsius" : null, factor: 1, from, to };
}

const isWord = ({ type }: Token) => type === "word" || type === "code";
const isStop = ({ type, text }: Token) => type === "sign" && (text === ";" || text === ".");
const isComma = ({ type, text }: Token) => type === "sign" && text === ",";

const wordsIn = (tokens: readonly Token[], [from, to]: Range): readonly string[] =>
  tokens
    .slice(from, to)
    .filter(isWord)
    .map(({ key }) => key);

/** The clauses of a text, between its semicolons and full stops. */
function clausesOf(tokens: readonly Token[]): readonly Range[] {
  const stops = tokens.flatMap((token, at) => (isStop(token) ? [at] : []));
  return [...stops, tokens.length].map((stop, index): Range => [index === 0 ? 0 : stops[index - 1]! + 1, stop]);
}

/** Each figure of a clause with the stretch of words that tells it. */
function statementsOf(tokens: readonly Token[], [from, to]: Range, stated: readonly Stated[]) {
  const cuts = stated.map((of, index) => {
    const next = stated[index + 1];
    return next ? cutBetween(tokens, of, next, index === 0 ? from : null) : to;
  });
  return stated.map((of, index) => ({
    of,
    range: [index === 0 ? from : cuts[index - 1]!, cuts[index]!] as const,
  }));
}

/**
 * Where one figure's words end and the next one's begin: at a comma, else before the connective, else right behind the
 * first where its words stand before it.
 */
function cutBetween(tokens: readonly Token[], one: Stated, next: Stated, start: number | null): number {
  const between = Array.from({ length: next.from - one.to }, (_, index) => one.to + index);
  const comma = between.find((at) => isComma(tokens[at]!));
  if (comma !== undefined) return comma;
  const connective = between.reverse().find((at) => CONNECTIVES.has(tokens[at]!.key));
  if (connective !== undefined) return connective;
  const leads = start !== null && wordsIn(tokens, [start, one.from]).length > 0;
  return leads ? one.to : next.from;
}
