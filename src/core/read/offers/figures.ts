import type { Measure } from "../../quantity/notation/units.js";
import { times } from "../../quantity/readValue.js";
import { amountAt } from "../words/figures.js";
import type { Token } from "../words/token.js";
import { tokensOf } from "../words/tokens.js";
import { toleranceAt } from "../words/tolerances.js";
import type { Amount, Figure, PrintedTolerance } from "../words/words.js";

/** A number of a description: its unit where one is printed at it, and the sign or word before it. */
export type OfferFigure = {
  readonly number: number;
  readonly measure: Measure | null;
  readonly factor: number;
  readonly capitalM: boolean;
  /** Whether a unit is printed at this very number, not only at another of its group. */
  readonly own: boolean;
  readonly unitText: string;
  /** What stands between the number before and this one. */
  readonly before: string;
  /** Figures of one group hang together: 40/40/20. */
  readonly group: number;
};

/** The numbers of a description in order, and the tolerances printed among them. */
export type DescribedFigures = {
  readonly figures: readonly OfferFigure[];
  readonly tolerances: readonly PrintedTolerance[];
  readonly tokens: readonly Token[];
};

/** The numbers of a description with their units, by the grammar of parts lists. */
export function figuresIn(text: string): DescribedFigures {
  const tokens = tokensOf(text);
  const figures: OfferFigure[] = [];
  const tolerances: PrintedTolerance[] = [];
  let group = 0;
  let last = 0;
  for (let at = 0; at < tokens.length; ) {
    const tolerance = toleranceAt(tokens, at);
    if (tolerance && isTolerance(tolerance, tokens)) {
      tolerances.push(tolerance);
      at = last = tolerance.to;
      continue;
    }
    const amount = amountAt(tokens, at);
    if (!amount) {
      at++;
      continue;
    }
    for (const figure of amount.figures) {
      figures.push(offerFigure(figure, amount, tokens, textBetween(tokens, last, figure.from), group));
      last = figure.to;
    }
    group++;
    at = amount.to;
  }
  return { figures, tolerances, tokens };
}

/** A lone "-20" or "+ 100" without percent is a joint between figures, not a limit. */
function isTolerance(tolerance: PrintedTolerance, tokens: readonly Token[]): boolean {
  const first = tokens[tolerance.from]!.key;
  return (
    !tolerance.absolute ||
    first === "±" ||
    (first === "+" && tokens[tolerance.from + 1]?.type === "sign") ||
    tolerance.unit !== null
  );
}

function offerFigure(
  figure: Figure,
  amount: Amount,
  tokens: readonly Token[],
  before: string,
  group: number,
): OfferFigure {
  const unitToken = tokens[figure.to - 1]!;
  const own = unitToken.type === "word" || tokens[figure.from]!.unit !== null;
  const shared = amount.figures.find((f) => f.from > figure.from && tokens[f.to - 1]!.type === "word");
  const unit = own || shared || before !== "/" ? figure.unit : null;
  return {
    number: figure.number,
    measure: unit?.measure ?? null,
    factor: unit?.factor ?? 1,
    capitalM: unit?.capitalM === true,
    own,
    unitText: own ? unitToken.text : shared ? tokens[shared.to - 1]!.text : "",
    before,
    group,
  };
}

const textBetween = (tokens: readonly Token[], from: number, to: number) =>
  tokens
    .slice(from, to)
    .map((token) => token.key)
    .join(" ");

/** A figure in base units. */
export const inBase = (figure: OfferFigure): number => times(figure.number, figure.factor);
