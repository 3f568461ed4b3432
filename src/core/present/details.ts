import type { Fact } from "../fact.js";
import type { Construction, Dielectric, ListedAs, Part } from "../part.js";
import { factOf, type Origin } from "./from.js";

const CONSTRUCTIONS: readonly string[] = [
  "composition",
  "film",
  "metal-film",
  "metal-oxide",
  "carbon-film",
  "wirewound",
] satisfies readonly Construction[];

const DIELECTRICS: readonly string[] = [
  "paper",
  "mica",
  "silver-mica",
  "ceramic",
  "electrolytic",
  "tantalum",
  "film",
  "polyester",
  "polypropylene",
  "polystyrene",
  "oil",
  "air",
] satisfies readonly Dielectric[];

const TEMPERATURE_CODE = /^(NP[O0]|C0G|[NP]\d{2,4}|[XYZ]\d[A-Z])$/i;

const LISTED_AS = /^(not fitted|selected in test|part of \S.*)$/;

/** What a list says of a part beside its figures, that its type does not say already. */
export type Details = Pick<
  Part,
  "construction" | "dielectric" | "temperatureCoefficient" | "taper" | "pins" | "listedAs"
>;

/** The details of a part as one cell. @example "ceramic, N750" @example "audio taper" @example "pins 1-2" */
export function writeDetails({
  construction,
  dielectric,
  temperatureCoefficient,
  taper,
  pins,
  listedAs,
}: Details): string {
  const words = [
    construction?.value,
    dielectric?.value,
    temperatureCoefficient?.value,
    taper && `${taper} taper`,
    pins && `pins ${pins}`,
    listedAs,
  ];
  return words.filter(Boolean).join(", ");
}

/** Such a cell read back; `film` is a capacitor's or a resistor's by the part's kind. */
export function readDetails(cell: string | null, kind: Part["kind"], origin: Origin | undefined): Details {
  const words = (cell ?? "")
    .split(",")
    .map((word) => word.trim())
    .filter(Boolean);
  const found = (fits: (word: string) => boolean) => words.find(fits) ?? null;
  const asFact = <T extends string>(word: string | null): Fact<T> | null =>
    word === null ? null : factOf(word as T, cell ?? "", origin);
  const isCapacitor = kind === "capacitor";
  return {
    construction: asFact<Construction>(isCapacitor ? null : found((word) => CONSTRUCTIONS.includes(word))),
    dielectric: asFact<Dielectric>(isCapacitor ? found((word) => DIELECTRICS.includes(word)) : null),
    temperatureCoefficient: asFact<string>(found((word) => TEMPERATURE_CODE.test(word))),
    taper: found((word) => word.endsWith(" taper"))?.replace(/ taper$/, "") ?? null,
    pins: found((word) => word.startsWith("pins "))?.slice("pins ".length) ?? null,
    listedAs: found((word) => LISTED_AS.test(word)) as ListedAs | null,
  };
}
