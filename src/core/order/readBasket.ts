import type { Basket, BasketLine, BasketOffer, Vendor } from "../plan.js";
import { PartsError } from "../problem.js";

type Json = Readonly<Record<string, unknown>>;

const WANTED = "An ordering problem has vendors, offers, lines and options.";

/**
 * An ordering problem from its JSON; what else stands there is passed over.
 *
 * @throws PartsError "unreadable" naming the first field that is missing or no number, and where it stands.
 */
export function readBasket(text: string): Basket {
  const json = parsed(text);
  const options = (json.options ?? {}) as Json;
  return {
    vendors: listOf(json, "vendors").map((vendor) => readVendor(vendor)),
    offers: listOf(json, "offers").map((offer) => readOffer(offer)),
    lines: listOf(json, "lines").map((line) => readLine(line)),
    options: {
      maxVendors: optional(options, "maxVendors", "options"),
      excluded: Array.isArray(options.excluded) ? options.excluded.map(String) : [],
    },
  };
}

function parsed(text: string): Json {
  try {
    const json: unknown = JSON.parse(text);
    if (json && typeof json === "object" && !Array.isArray(json)) return json as Json;
  } catch {
    // told below, like any other text that is no problem
  }
  throw new PartsError("unreadable", text.slice(0, 40), WANTED);
}

function listOf(json: Json, name: string): readonly Json[] {
  const list = json[name];
  if (!Array.isArray(list)) throw new PartsError("unreadable", name, WANTED, name);
  return list as Json[];
}

const readVendor = (json: Json): Vendor => ({
  id: String(json.id),
  shipping: number(json, "shipping"),
  freeFrom: optional(json, "freeFrom"),
  minimumOrder: optional(json, "minimumOrder"),
  smallOrderFee: optional(json, "smallOrderFee"),
  rate: optional(json, "rate") ?? 1,
});

const readOffer = (json: Json): BasketOffer => ({
  id: String(json.id),
  vendor: String(json.vendor),
  pack: number(json, "pack"),
  minimum: optional(json, "minimum") ?? 1,
  multiple: optional(json, "multiple") ?? 1,
  stock: optional(json, "stock"),
  breaks: readBreaks(json),
});

const readLine = (json: Json): BasketLine => ({
  id: String(json.id),
  pieces: number(json, "pieces"),
  fits: listOf(json, "fits").map(String),
  single: json.single === true,
});

function readBreaks(json: Json): BasketOffer["breaks"] {
  const pairs = listOf(json, "breaks") as unknown as readonly (readonly [number, number])[];
  for (const pair of pairs)
    if (!Array.isArray(pair) || !pair.every(Number.isFinite))
      throw new PartsError("unreadable", JSON.stringify(pair), "A break is [units, price].", String(json.id));
  return [...pairs].sort(([a], [b]) => a - b);
}

function number(json: Json, name: string): number {
  const value = json[name];
  if (typeof value === "number" && Number.isFinite(value) && value >= 0) return value;
  throw new PartsError("unreadable", String(value), `"${name}" is a number, not below 0.`, String(json.id ?? ""));
}

function optional(json: Json, name: string, at = String(json.id ?? "")): number | null {
  return json[name] === null || json[name] === undefined ? null : number({ ...json, id: at }, name);
}
