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
  const units: Record<Class | "henries", Unit | null> = {
    wholes: null,
    decimals: null,
    electrolytics: null,
    henries: null,
  };
  for (const clause of clauses) {
    if (clause.kind === "capacitor") readClasses(clause, units);
    if (clause.kind === "inductor") units.henries = firstUnit(clause, "henry") ?? units.henries;
  }
  return units;
}

function firstUnit(clause: Clause, measure: string): Unit | null {
  const found = clause.words.tokens.map((token) => (token.type === "word" ? unitNamed(token.key) : undefined));
  return found.find((unit) => unit?.measure === measure) ?? null;
}

/** Class words gather until a unit comes; a unit without any holds for all. Amounts ("1 mfd and over") are no units here. */
function readClasses(clause: Clause, units: Record<Class | "henries", Unit | null>): void {
  let classes: Class[] = [];
  for (const [at, token] of clause.words.tokens.entries()) {
    if (/^(?:unless|except|otherwise)$/.test(token.key)) {
      if (at > clause.subject) return;
      continue;
    }
    const own = CLASS_OF[token.key];
    if (own) classes.push(own);
    const unit =
      token.type === "word" && clause.words.tokens[at - 1]?.type !== "number" ? unitNamed(token.key) : undefined;
    if (unit?.measure !== "farad" || token.key === "f") continue;
    const named = [classesBehind(clause.words.tokens, at + 1), classes].find((own) => own.length > 0) ?? ALL;
    for (const name of named) units[name] ??= unit;
    classes = [];
  }
}

const ALL: readonly Class[] = ["wholes", "decimals", "electrolytics"];

/** "in mfd if decimal or electrolytic": the classes named behind a unit. */
function classesBehind(tokens: readonly Token[], at: number): readonly Class[] {
  if (!/^(?:if|when|for|where)$/.test(tokens[at]?.key ?? "")) return [];
  const end = tokens.findIndex(({ key }, i) => i > at && /^[,;.]$/.test(key));
  return tokens.slice(at, end < 0 ? undefined : end).flatMap(({ key }) => CLASS_OF[key] ?? []);
}
