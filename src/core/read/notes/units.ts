import { type Unit, unitNamed } from "../../quantity/notation/units.js";
import type { BareUnits } from "../parts/context.js";
import type { Token } from "../words/token.js";
import type { Clause } from "./clauses.js";

type Class = "wholes" | "decimals" | "electrolytics";

/** Words of notes that name a way of printing a capacitor's number. */
const CLASS_OF: Readonly<Record<string, Class>> = {
  decimals: "decimals", decimal: "decimals", fractions: "decimals", under: "decimals", below: "decimals", less: "decimals",
  whole: "wholes", over: "wholes", above: "wholes", more: "wholes", greater: "wholes", wholes: "wholes",
  "<": "decimals", ">": "wholes",
  electrolytics: "electrolytics", electrolytic: "electrolytics",
}; // biome-ignore format: a table

/** The units that notes give to bare capacitor and coil numbers: "capacitors in MMF"; "decimals are mfd, whole numbers mmfd". */
export function bareUnitsOf(clauses: readonly Clause[]): BareUnits {
  const said = clauses.flatMap((clause) => (clause.kind === "capacitor" ? classUnits(clause) : []));
  const unitOf = (name: Class) =>
    (said.find(({ classes }) => classes.includes(name)) ?? said.find(isGeneral))?.unit ?? null;
  const coils = clauses.filter((clause) => clause.kind === "inductor").map((clause) => firstUnit(clause, "henry"));
  return {
    wholes: unitOf("wholes"),
    decimals: unitOf("decimals"),
    electrolytics: unitOf("electrolytics"),
    henries: coils.find((unit) => unit !== null) ?? null,
  };
}

/** A unit with the classes of numbers it is said of; none: of all that no other is said of. */
type ClassUnit = { readonly classes: readonly Class[]; readonly unit: Unit };

const isGeneral = ({ classes }: ClassUnit) => classes.length === 0;

function firstUnit(clause: Clause, measure: string): Unit | null {
  const found = clause.words.tokens.map((token) => (token.type === "word" ? unitNamed(token.key) : undefined));
  return found.find((unit) => unit?.measure === measure) ?? null;
}

/** Class words gather until a unit comes, or stand behind it. Amounts ("1 mfd and over") are no units here. */
function classUnits({ words: { tokens }, subject }: Clause): readonly ClassUnit[] {
  const found: ClassUnit[] = [];
  let before: Class[] = [];
  for (const [at, token] of tokens.entries()) {
    if (/^(?:unless|except|otherwise)$/.test(token.key)) {
      if (at > subject) break;
      continue;
    }
    const own = CLASS_OF[token.key];
    if (own) before.push(own);
    const unit = token.type === "word" && tokens[at - 1]?.type !== "number" ? unitNamed(token.key) : undefined;
    if (unit?.measure !== "farad" || token.key === "f") continue;
    const behind = classesBehind(tokens, at + 1);
    found.push({ classes: behind.length > 0 ? behind : before, unit });
    before = [];
  }
  return found;
}

/** "in mfd if decimal or electrolytic": the classes named behind a unit. */
function classesBehind(tokens: readonly Token[], at: number): readonly Class[] {
  if (!/^(?:if|when|for|where)$/.test(tokens[at]?.key ?? "")) return [];
  const end = tokens.findIndex(({ key }, i) => i > at && /^[,;.]$/.test(key));
  return tokens.slice(at, end < 0 ? undefined : end).flatMap(({ key }) => CLASS_OF[key] ?? []);
}
