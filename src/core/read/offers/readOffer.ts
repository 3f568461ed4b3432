import type { Offer } from "../../offer.js";
import type { Kind } from "../../part.js";
import { FIELDS_OF_PART } from "./columnWords.js";
import { countOf } from "./counts.js";
import { type DescribedPart, describedPart, type ListHints } from "./describedPart.js";
import type { OfferMapping } from "./offerColumn.js";
import { packIn } from "./packs.js";
import { noOfferBecause } from "./refusals.js";
import { hasSwitch, isNewOldStock, measuredIn, sizeIn, taperIn } from "./remarks.js";
import { onceFor } from "./remember.js";
import type { RowTexts } from "./rowTexts.js";
import { supplyOf } from "./supply.js";
import { tradeOf } from "./trade.js";

/** What all rows of a list share: whose it is, its layout, what it says as a whole, and whether it prints prices at all. */
export type ListContext = {
  readonly vendor: string;
  readonly mapping: OfferMapping;
  readonly hints: ListHints;
  readonly isPriced: boolean;
};

/** Kinds that are nothing without their value. */
const NEED_VALUE: ReadonlySet<Kind> = new Set(["resistor", "capacitor", "potentiometer"]);

/** An offer, or why there is none. */
export type OfferOrReason = { readonly offer: Offer } | { readonly reason: string };

/** The offer that a row makes, or the reason why it makes none. @param row The 1-based line it stands on. */
export function readOffer(texts: RowTexts, row: number, list: ListContext): OfferOrReason {
  const { mapping, hints } = list;
  const stockNumber = texts.first("stock number");
  const description = texts.joined("description") || texts.joined("kind", "technology", "body", "note");
  const errors = [texts.joined("price"), description, technical(texts)].join(" ");
  const reason = noOfferBecause(
    /#(n\/a|value|div|ref)/i.test(errors) ? "#N/A" : description || technical(texts),
    stockNumber,
  );
  if (reason) return { reason };
  const { pack, rest } = packIn(description);
  const counted =
    mapping.columns.some(({ field }) => field === "stock") || list.isPriced ? { stock: null, rest } : countOf(rest);
  const part = describedOnce(keyOf(counted.rest, texts, hints), () => describedPart(counted.rest, texts, hints));
  const missing = lacking(part);
  if (missing) return { reason: missing };
  const stock = counted.stock === null ? [] : [String(counted.stock)];
  return { offer: offerOf({ texts, row, list, part, description, pack, stock }) };
}

/** Rows that describe the same part are read once: in a long list most of them come several times. */
const describedOnce = onceFor<DescribedPart>(60_000);

function keyOf(description: string, texts: RowTexts, { mark, capitalM, headingKind }: ListHints): string {
  let key = `${mark}\n${capitalM}\n${headingKind}\n${description}`;
  for (const { column, text } of texts.of(...FIELDS_OF_PART)) key += `\n${column.field}\n${column.unit}\n${text}`;
  return key;
}

const technical = (texts: RowTexts) => texts.joined("value", "resistance", "capacitance", "inductance");

/** A part that is nothing without its value has to state one. Where two statements clash, that is said instead. */
function lacking(part: DescribedPart): string | null {
  const hasValue = Boolean(part.value || part.valueMin || part.sections);
  const isZeroOhms = part.value === 0 && part.kind === "resistor";
  const isOpen = part.warnings.some(({ code }) => code === "conflict" || code === "ambiguous-m");
  return NEED_VALUE.has(part.kind) && !hasValue && !isZeroOhms && !isOpen
    ? `no value could be read of this ${part.kind}`
    : null;
}

type Pieces = {
  readonly texts: RowTexts;
  readonly row: number;
  readonly list: ListContext;
  readonly part: DescribedPart;
  readonly description: string;
  readonly pack: number | null;
  readonly stock: readonly string[];
};

function offerOf({ texts, row, list, part, description, pack, stock }: Pieces): Offer {
  const { mark } = list.hints;
  const stockNumber = texts.first("stock number");
  const note = texts.joined("note");
  const status = texts.of("status", "note", "price").map(({ text }) => text);
  const supply = supplyOf(
    { status, stock: [...stock, ...texts.of("stock", "status").map(({ text }) => text)], description },
    mark,
  );
  const isControl = part.kind === "potentiometer";
  const words = `${description}; ${texts.joined("body", "taper", "technology")}`;
  return {
    id: `${list.vendor}:${stockNumber ?? `row ${row}`}`,
    vendor: list.vendor,
    row,
    stockNumber,
    description,
    ...part,
    taper: isControl ? taperIn(words) : null,
    withSwitch: isControl && hasSwitch(words),
    newOldStock: isNewOldStock([words, note, ...status].join("; ")),
    measured: measuredIn(note, part.kind, mark),
    ...tradeOf(texts, pack, list.mapping),
    ...supply,
    ...bodySize(texts, `${description} ${texts.joined("body")}`, mark),
  };
}

function bodySize(
  texts: RowTexts,
  words: string,
  mark: ListHints["mark"],
): Pick<Offer, "lengthMetres" | "diameterMetres"> {
  const printed = sizeIn(words, mark);
  const metres = (text: string | null) => {
    const millimetres = Number(/\d+(?:[.,]\d+)?/.exec(text ?? "")?.[0].replace(",", ".") ?? Number.NaN);
    return Number.isNaN(millimetres) ? null : Number((millimetres / 1000).toPrecision(6));
  };
  return {
    lengthMetres: metres(texts.first("length")) ?? printed.lengthMetres,
    diameterMetres: metres(texts.first("diameter")) ?? printed.diameterMetres,
  };
}
