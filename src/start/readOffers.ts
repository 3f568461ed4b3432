import { readFileSync } from "node:fs";
import path from "node:path";
import { type Offer, type OffersRead, readOffers } from "../core/index.js";
import { readSource } from "../sources/readSource.js";

/** `npm run -s read:offers -- FILE...`: each vendor's list as one line of JSON, prices of one piece and tax as printed. */
for (const file of process.argv.slice(2)) {
  const name = path.basename(file);
  const { lines } = await readSource(name, readFileSync(file));
  console.log(JSON.stringify(printed(readOffers(lines))));
}

function printed({ offers, refused, heads, mapping }: OffersRead) {
  return { mapping, rows: offers.map(rowOf), refused: refused.map(({ row }) => row), reasons: refused, heads };
}

function rowOf({ tolerance, warnings, breaks, pack, voltsKind, id: _, vendor: __, ...offer }: Offer) {
  return {
    ...offer,
    pack,
    breaks: breaks.map(([units, price]) => [units * pack, Number((price / pack).toPrecision(12))]),
    toleranceMinus: tolerance?.minus ?? null,
    tolerancePlus: tolerance?.plus ?? null,
    voltsKind: voltsKind === "ac" ? "ac" : null,
    warnings: warnings.map(({ code }) => code),
    because: warnings.map(({ text }) => text),
  };
}
